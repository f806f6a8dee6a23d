import { mustNotBeNegative } from '../contact/index.ts'
import {
  type Doubt,
  doubtBelow,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type PascalSecond,
  type Ratio,
} from '../terms/index.ts'
import type { FilmConditions } from './conditions.ts'
import { loadPower, regimePowers, speedPower } from './filmRegimes.ts'
import { filmRegime, minimumFilm } from './filmThickness.ts'
import { combinedRoughness, lambdaRatio } from './lambda.ts'
import { type LubricationBounds, type LubricationRegime, lubricationRegime, usualBounds } from './lubricationRegime.ts'

/** Roughness of one surface with its standard uncertainty. */
export interface Roughness {
  readonly value: Metre
  readonly uncertainty: Metre
}

/** Standard uncertainties of what goes into λ beside roughness. */
export interface FilmUncertainties {
  readonly viscosity: PascalSecond
  /** 1/Pa */
  readonly pressureViscosity?: number
  readonly load?: Newton
  /** Of the film law itself, as a share; 0.3 would admit what was seen in print. */
  readonly law?: Ratio
}

/** Causes of the uncertainty of λ. */
export type LambdaSource = 'viscosity' | 'pressureViscosity' | 'load' | 'law' | 'upperRoughness' | 'lowerRoughness'

/** An interval of λ; `high` null where it has no bound, as a surface may be perfectly smooth. */
export interface LambdaRange {
  readonly low: Ratio
  readonly high: Ratio | null
}

/** λ with how well it is known, and whether its regime survives that. */
export interface LambdaInterval extends Explained {
  readonly lambda: Ratio
  readonly regime: LubricationRegime
  /** Relative standard uncertainties multiplied through the powers of the law (JCGM 100), on the logarithm of λ. */
  readonly firstOrder: LambdaRange
  /** All inputs at the ends of their intervals at once: the widest that could be. */
  readonly byEnds: LambdaRange
  /** Standard uncertainty of ln λ. */
  readonly uncertainty: Ratio
  /** Share of each cause in its square; empty where nothing is uncertain. */
  readonly shares: Readonly<Partial<Record<LambdaSource, Ratio>>>
  /** Whether the first-order interval, and the widest, lie in one regime. */
  readonly survives: { readonly firstOrder: boolean; readonly byEnds: boolean }
}

/** What the interval is made from. */
export interface LambdaQuestion {
  readonly conditions: FilmConditions
  readonly upper: Roughness
  readonly lower: Roughness
  readonly uncertainties: FilmUncertainties
  readonly bounds?: LubricationBounds
  /** Half-width of every interval in standard uncertainties; 2 covers about 95 % in the first order. */
  readonly coverage?: number
}

/** λ of a contact as an interval from the uncertainties of viscosity and roughness. */
export function lambdaInterval(question: LambdaQuestion): LambdaInterval {
  checkQuestion(question)
  const { conditions, upper, lower, bounds = usualBounds, coverage = 2 } = question
  const lambda = lambdaRatio(minimumFilm(conditions), combinedRoughness(upper.value, lower.value))
  const parts = relativeParts(question)
  const uncertainty = Math.hypot(...Object.values(parts))
  const widening = Math.exp(coverage * uncertainty)
  const firstOrder = { low: lambda / widening, high: Number.isFinite(lambda * widening) ? lambda * widening : null }
  const byEnds = { low: lambdaAt(question, -coverage) ?? 0, high: lambdaAt(question, coverage) }
  const regime = lubricationRegime(lambda, bounds)
  const within = ({ low, high }: LambdaRange): boolean =>
    lubricationRegime(low, bounds) === lubricationRegime(high ?? Number.POSITIVE_INFINITY, bounds)
  const squares = Object.entries(parts).map(([source, part]) => [source, (part / uncertainty) ** 2])
  return {
    lambda,
    regime,
    firstOrder,
    byEnds,
    uncertainty,
    shares: uncertainty > 0 ? Object.fromEntries(squares) : {},
    survives: { firstOrder: within(firstOrder), byEnds: within(byEnds) },
    law: 'minimum film over combined roughness, uncertainty through the powers of its regime',
    source: 'film after Hamrock & Dowson (see `explainFilm`); JCGM 100:2008, 5.1.6; bounds by convention',
    valid:
      'Roughness of the unloaded surfaces; a contact flattens it and running-in polishes it, so λ under 1 says little but ' +
      '"boundary or mixed". The law’s own error is in the interval only if it was given.',
    doubts: doubtsFound(touching(lambda)),
  }
}

/** Uncertainties of ln λ by cause. */
function relativeParts(question: LambdaQuestion): Readonly<Record<LambdaSource, Ratio>> {
  const { conditions, upper, lower, uncertainties } = question
  const regime = filmRegime(conditions)
  const thickening = regimePowers[regime].viscosity
  const square = combinedRoughness(upper.value, lower.value) ** 2
  const share = (uncertainty: number | undefined, value: number): number => (uncertainty ? uncertainty / value : 0)
  return {
    viscosity: speedPower(regime) * share(uncertainties.viscosity, conditions.viscosity),
    pressureViscosity:
      thickening === 0 ? 0 : thickening * share(uncertainties.pressureViscosity, conditions.pressureViscosity),
    load: Math.abs(loadPower(regime)) * share(uncertainties.load, conditions.load),
    law: uncertainties.law ?? 0,
    upperRoughness: (upper.value * upper.uncertainty) / square,
    lowerRoughness: (lower.value * lower.uncertainty) / square,
  }
}

/** λ with every input `steps` standard uncertainties towards a thicker film; null where no roughness is left, and no bound. */
function lambdaAt({ conditions, upper, lower, uncertainties }: LambdaQuestion, steps: number): Ratio | null {
  const { viscosity, pressureViscosity = 0, load = 0, law = 0 } = uncertainties
  const thinned = conditions.viscosity + steps * viscosity
  const rough = ({ value, uncertainty }: Roughness): Metre => Math.max(0, value - steps * uncertainty)
  const roughness = combinedRoughness(rough(upper), rough(lower))
  const lighter = conditions.load - steps * load
  if (roughness === 0 || lighter <= 0) return null
  if (thinned <= 0) return 0
  const film = minimumFilm({
    ...conditions,
    viscosity: thinned,
    pressureViscosity: Math.max(0, conditions.pressureViscosity + steps * pressureViscosity),
    load: lighter,
  })
  return lambdaRatio(film * Math.max(0, 1 + steps * law), roughness)
}

const touching = (lambda: Ratio): Doubt | undefined =>
  doubtBelow({
    kind: 'surfacesTouch',
    seen: lambda,
    limit: 1,
    say: (seen) =>
      `λ is ${seen}: asperities carry much of the load, the film law of smooth surfaces is used beyond its ground, and films of ` +
      'adsorbed molecules decide friction.',
  })

function checkQuestion({ upper, lower, uncertainties, coverage = 2 }: LambdaQuestion): void {
  mustNotBeNegative(upper.uncertainty, 'uncertainty of the upper roughness', 'm')
  mustNotBeNegative(lower.uncertainty, 'uncertainty of the lower roughness', 'm')
  mustNotBeNegative(uncertainties.viscosity, 'uncertainty of the viscosity', 'Pa·s')
  mustNotBeNegative(uncertainties.pressureViscosity ?? 0, 'uncertainty of the pressure–viscosity coefficient', '1/Pa')
  mustNotBeNegative(uncertainties.load ?? 0, 'uncertainty of the load', 'N')
  mustNotBeNegative(uncertainties.law ?? 0, 'uncertainty of the law', '')
  mustNotBeNegative(coverage, 'coverage factor', '')
}
