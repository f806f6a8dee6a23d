import type { Metre, Pascal } from '../terms/index.ts'
import { mustBePositive } from './refuse.ts'

/** Two elastic bodies that touch at a point, reduced to an elastic sphere on a rigid flat. */
export interface SphereOnFlat {
  /** Effective radius of both, see `effectiveRadius`. */
  readonly radius: Metre
  /** E* of both, see `effectiveModulus`. */
  readonly effectiveModulus: Pascal
}

/** Throws RangeError for a radius or a modulus that is not above zero and finite. */
export function checkSphere(radius: Metre, modulus: Pascal): void {
  mustBePositive(radius, 'radius', 'm')
  mustBePositive(modulus, 'effective modulus', 'Pa')
}
