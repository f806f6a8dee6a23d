import {
  type FilmLaw,
  type FilmPair,
  filmLaw,
  type LubricationBounds,
  type ThinningLaw,
  thinningLaw,
  usualBounds,
} from '../film/index.ts'
import { flowFunction } from '../material/index.ts'
import type { Metre, Pascal, Ratio } from '../terms/index.ts'
import type { PlannedContact } from './plannedContact.ts'
import type { ExpectedFriction, PlanQuestion } from './question.ts'

/**
 * Friction before the test. While the surfaces touch it is what somebody expects; a full film between soft bodies has a law (de
 * Vicente, Stokes & Spikes 2005), between hard ones a usual traction. Between them the share of boundary friction falls as
 * 1/(1 + (λ/λ₀)²) about the geometric middle of the bounds. That form is ours, for planning only: nobody can predict a
 * mixed regime, so the band is wide and says so.
 */
export interface FrictionModel {
  readonly expected: ExpectedFriction
  /** null without a liquid, a viscosity, a roughness or a round contact of known stiffness: then friction is taken as boundary. */
  readonly film: FilmModel | null
}

/** What the film of a question is worked out from. */
export interface FilmModel {
  /** At the viscosity of `pair`; at 1 Pa·s where the liquid thins. */
  readonly law: FilmLaw
  readonly pair: FilmPair
  /** null for a liquid of one viscosity. */
  readonly thinning: ThinningLaw | null
  readonly roughness: Metre
  readonly bounds: LubricationBounds
  readonly middle: Ratio
  /** Soft bodies have a law of film friction. */
  readonly soft: boolean
  /** Factor to either side within which λ lies, two standard uncertainties of viscosity, roughness and law. */
  readonly spread: Ratio
}

/** E* under which a contact counts as soft. Common practice, no source: rubbers and gels lie far below, plastics above. */
export const softBelow: Pascal = 3e8

/** Standard uncertainty of a film law, as a share: measured films averaged 30 % above the formula in one optical study (J. Lubr. Tech. 103:284). */
const filmLawUncertainty: Ratio = 0.3

/** Relative standard uncertainty taken for a roughness or viscosity for which nobody gave one. Common practice, no source. */
const unsaidUncertainty = { roughness: 0.3, viscosity: 0.1 } as const

/** The model of a question. */
export function frictionModel(question: PlanQuestion, contact: PlannedContact): FrictionModel {
  const { pair, liquid, expected } = question
  const roughness = Math.hypot(pair.upper.roughness ?? 0, pair.lower.roughness ?? 0)
  if (liquid?.viscosity === undefined || contact.kind !== 'point' || !(roughness > 0)) return { expected, film: null }
  const films: FilmPair = {
    radius: contact.radius,
    effectiveModulus: contact.modulus,
    viscosity: liquid.viscosity,
    pressureViscosity: question.pressureViscosity ?? 0,
  }
  const { flow } = question
  const thinning = flow === undefined ? null : thinningLaw(films, flowFunction(flow.law, flow.parameters))
  const soft = contact.modulus < softBelow
  const middle = Math.sqrt(usualBounds.mixedFrom * usualBounds.fullFilmFrom)
  return {
    expected,
    film: {
      law: thinning?.unit ?? filmLaw(films),
      pair: films,
      thinning,
      roughness,
      bounds: usualBounds,
      middle,
      soft,
      spread: Math.exp(2 * lambdaUncertainty(question, roughness)),
    },
  }
}

/** Standard uncertainty of ln λ; the film goes with about the 2/3 power of viscosity in all regimes that elastic bodies reach. */
function lambdaUncertainty({ pair, liquid }: PlanQuestion, roughness: Metre): Ratio {
  const viscosity = liquid?.viscosity ?? 1
  const thick = (2 / 3) * ((liquid?.viscosityUncertainty ?? unsaidUncertainty.viscosity * viscosity) / viscosity)
  const rough = (['upper', 'lower'] as const).map((side) => {
    const value = pair[side].roughness ?? 0
    const uncertainty = pair[side].roughnessUncertainty ?? unsaidUncertainty.roughness * value
    return (value * uncertainty) / roughness ** 2
  })
  return Math.hypot(thick, filmLawUncertainty, ...rough)
}
