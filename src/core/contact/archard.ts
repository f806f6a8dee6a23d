import type { Metre, Newton, Pascal, Ratio } from '../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'

/** Archard's law is written with and without the 3; a coefficient belongs to one of the two. */
export type ArchardForm = 'KFs/H' | 'KFs/3H'

/** Worn volume per load and distance, m³/(N·m) = 1/Pa, from a dimensionless coefficient and the hardness of what wears. */
export function rateOfCoefficient(coefficient: Ratio, hardness: Pascal, form: ArchardForm): number {
  mustNotBeNegative(coefficient, 'wear coefficient', '')
  mustBePositive(hardness, 'hardness', 'Pa')
  return coefficient / (form === 'KFs/H' ? hardness : 3 * hardness)
}

/** V = kFs in m³: Archard 1953, J. Appl. Phys. 24:981, with the coefficient and the hardness in one rate. */
export function wornVolume(specificRate: number, load: Newton, distance: Metre): number {
  mustNotBeNegative(specificRate, 'specific wear rate', 'm³/(N·m)')
  mustNotBeNegative(load, 'load', 'N')
  mustNotBeNegative(distance, 'distance', 'm')
  return specificRate * load * distance
}

/** k = V/(Fs) in m³/(N·m), `wornVolume` backwards. A negative volume (transfer, swelling) gives a negative rate. */
export function specificWearRate(volume: number, load: Newton, distance: Metre): number {
  mustBePositive(load, 'load', 'N')
  mustBePositive(distance, 'distance', 'm')
  if (!Number.isFinite(volume)) throw new RangeError(`volume must be finite, got ${volume} m³`)
  return volume / (load * distance)
}
