import {
  type Doubt,
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type Pascal,
} from '../terms/index.ts'
import { contactStiffness, hertzApproach, hertzPeakPressure, hertzRadius } from './hertz.ts'
import { jkrRadius } from './jkr.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'
import { baseFelt, largeStrain } from './sphereDoubts.ts'
import type { SphereOnFlat } from './sphereOnFlat.ts'

/** What makes the elastic law doubtful; what is not given is not judged. */
export interface SphereCircumstances {
  /** Thickness of the thinner body, if it is a plate, a film or a layer. */
  readonly thickness?: Metre
  /** Root-mean-square roughness of both surfaces together, √(Rq₁² + Rq₂²). */
  readonly roughness?: Metre
  /** Peak pressure at which the weaker body first yields, see `firstYieldPressure`. */
  readonly yieldPressure?: Pascal
  /** J/m² */
  readonly workOfAdhesion?: number
}

/** An elastic contact of a sphere. */
export interface HertzContact extends Explained {
  readonly contactRadius: Metre
  readonly peakPressure: Pascal
  readonly meanPressure: Pascal
  readonly approach: Metre
  /** dF/dδ, N/m. */
  readonly stiffness: number
}

/** Elastic contact of sphere and flat or of two spheres, with all that speaks against it. Throws RangeError for what no contact can be. */
export function hertzContact(
  load: Newton,
  sphere: SphereOnFlat,
  circumstances: SphereCircumstances = {},
): HertzContact {
  const { radius, effectiveModulus } = sphere
  const contactRadius = hertzRadius(load, radius, effectiveModulus)
  const peakPressure = hertzPeakPressure(load, radius, effectiveModulus)
  const approach = hertzApproach(load, radius, effectiveModulus)
  return {
    contactRadius,
    peakPressure,
    meanPressure: (2 / 3) * peakPressure,
    approach,
    stiffness: contactStiffness(contactRadius, effectiveModulus),
    law: 'Hertz',
    source: 'Hertz 1882; Johnson 1985, Contact Mechanics, eqs. 4.22–4.24 (from memory)',
    valid:
      'Elastic, smooth, frictionless, without adhesion; contact radius under a tenth of the radius, bodies thicker than ' +
      'ten contact radii.',
    doubts: doubtsFound(
      largeStrain(contactRadius, radius),
      baseFelt(contactRadius, circumstances.thickness),
      roughContact(approach, circumstances.roughness),
      yields(peakPressure, circumstances.yieldPressure),
      adhesionLeftOut(load, sphere, circumstances.workOfAdhesion),
    ),
  }
}

/** Roughness against the approach; under 0.05 the error of Hertz' pressure is below 7 % (Johnson 1985, §13.5, from memory). */
function roughContact(approach: Metre, roughness: Metre | undefined): Doubt | undefined {
  if (roughness === undefined) return undefined
  mustNotBeNegative(roughness, 'roughness', 'm')
  if (approach === 0) return undefined
  return doubtAbove({
    kind: 'roughContact',
    seen: roughness / approach,
    limit: 0.05,
    say: (seen, limit) =>
      `Roughness is ${seen} of the elastic approach, over ${limit}: the load rests on asperities over a wider patch, ` +
      'and the pressure in the middle is lower than this.',
  })
}

function yields(peakPressure: Pascal, yieldPressure: Pascal | undefined): Doubt | undefined {
  if (yieldPressure === undefined) return undefined
  mustBePositive(yieldPressure, 'yield pressure', 'Pa')
  return doubtAbove({
    kind: 'yields',
    seen: peakPressure / yieldPressure,
    limit: 1,
    say: (seen) =>
      `The peak pressure is ${seen} times that of first yield: the weaker body is lastingly dented, the contact is ` +
      'larger and the pressure lower than this.',
  })
}

function adhesionLeftOut(load: Newton, sphere: SphereOnFlat, workOfAdhesion: number | undefined): Doubt | undefined {
  if (workOfAdhesion === undefined || load === 0) return undefined
  const wider =
    jkrRadius(load, { ...sphere, workOfAdhesion }) / hertzRadius(load, sphere.radius, sphere.effectiveModulus)
  return doubtAbove({
    kind: 'adhesionLeftOut',
    seen: wider - 1,
    limit: 0.05,
    say: (seen, limit) =>
      `Adhesion may widen the contact radius by ${seen} of itself (JKR), over ${limit}: take the law of the adhesive contact.`,
  })
}
