import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Metre, MetrePerSecond, Newton, Pascal, PascalSecond, Ratio } from '../terms/index.ts'

/** Pair and liquid of a film. */
export interface FilmPair {
  /** Effective radius in the direction of entrainment. */
  readonly radius: Metre
  /** E* of both bodies. The E' = 2E* of the film laws is made inside. */
  readonly effectiveModulus: Pascal
  /** At the pressure and temperature of the inlet, and at its shear rate. */
  readonly viscosity: PascalSecond
  /** α in 1/Pa; 0 for a liquid that pressure does not thicken. */
  readonly pressureViscosity: number
  /** Effective radius across the entrainment over the one along it, Ry/Rx; 1, a round contact, if not given. */
  readonly radiusRatio?: Ratio
}

/** What a film depends on. Inner loops may keep one such object and change its speed and load. */
export interface FilmConditions extends FilmPair {
  /**
   * Mean speed of the two surfaces past the contact, (u₁ + u₂)/2. Not the sliding speed: where one body stands still against
   * the contact it is half of that, see `entrainmentInPureSliding`.
   */
  readonly entrainmentSpeed: MetrePerSecond
  /** Normal force on one contact. */
  readonly load: Newton
}

/** Entrainment speed on a rheometer: the upper body's contact point stays in place, so it is half of the sliding speed. */
export const entrainmentInPureSliding = (slidingSpeed: MetrePerSecond): MetrePerSecond => slidingSpeed / 2

/** The same backwards. */
export const slidingOfEntrainment = (entrainmentSpeed: MetrePerSecond): MetrePerSecond => 2 * entrainmentSpeed

/** Dimensionless numbers of film laws, with E' = 2E*. */
export interface FilmNumbers {
  /** U = ηu/(E'R) */
  readonly speed: Ratio
  /** G = αE' */
  readonly material: Ratio
  /** W = F/(E'R²) */
  readonly load: Ratio
}

/** U, G and W of a contact. */
export function filmNumbers(conditions: FilmConditions): FilmNumbers {
  checkConditions(conditions)
  const { entrainmentSpeed, load, radius, effectiveModulus, viscosity, pressureViscosity } = conditions
  const doubled = 2 * effectiveModulus
  return {
    speed: (viscosity * entrainmentSpeed) / (doubled * radius),
    material: pressureViscosity * doubled,
    load: load / (doubled * radius ** 2),
  }
}

/** Throws RangeError for conditions that no film can have; a load of zero is one, as its film has no bound. */
export function checkConditions(conditions: FilmConditions): void {
  mustNotBeNegative(conditions.entrainmentSpeed, 'entrainment speed', 'm/s')
  mustBePositive(conditions.load, 'load', 'N')
  checkPair(conditions)
}

/** Throws RangeError for a pair or a liquid that cannot be. */
export function checkPair(pair: FilmPair): void {
  mustBePositive(pair.radius, 'radius', 'm')
  mustBePositive(pair.effectiveModulus, 'effective modulus', 'Pa')
  mustBePositive(pair.viscosity, 'viscosity', 'Pa·s')
  mustNotBeNegative(pair.pressureViscosity, 'pressure–viscosity coefficient', '1/Pa')
  if (pair.radiusRatio !== undefined) mustBePositive(pair.radiusRatio, 'radius ratio', '')
}
