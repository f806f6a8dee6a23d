import type { Metre, Pascal, Ratio } from '../terms/index.ts'
import { mustBePoissonRatio } from './refuse.ts'

/** What a small elastic deformation asks of a body. */
export interface ElasticBody {
  /** Infinite for a rigid body. */
  readonly elasticModulus: Pascal
  readonly poissonRatio: Ratio
}

/** A body that does not give way. */
export const rigidBody: ElasticBody = { elasticModulus: Number.POSITIVE_INFINITY, poissonRatio: 0 }

/**
 * E* of two bodies: 1/E* = (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂. Johnson 1985, Contact Mechanics, §4.2. Laws of films use
 * E' = 2E*; the functions here that need it make it themselves. Throws RangeError for a modulus that is not above zero,
 * for ν outside −1 … 0.5 and for two rigid bodies.
 */
export function effectiveModulus(first: ElasticBody, second: ElasticBody): Pascal {
  const compliance = complianceOf(first) + complianceOf(second)
  if (!(compliance > 0)) throw new RangeError('one of the two bodies must give way, got two rigid ones')
  return 1 / compliance
}

function complianceOf({ elasticModulus, poissonRatio }: ElasticBody): number {
  mustBePoissonRatio(poissonRatio)
  if (!(elasticModulus > 0)) throw new RangeError(`elastic modulus must be more than zero, got ${elasticModulus} Pa`)
  return (1 - poissonRatio ** 2) / elasticModulus
}

/**
 * R of two spheres: 1/R = 1/R₁ + 1/R₂. A flat has an infinite radius, a hollow a negative one. Johnson 1985, §4.2.
 * Throws RangeError where the two would not touch at a point, as a ball in a hollow smaller than itself.
 */
export function effectiveRadius(first: Metre, second: Metre): Metre {
  const curvature = 1 / first + 1 / second
  if (!(curvature > 0 && curvature < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`radii must touch at a point, got ${first} m and ${second} m`)
  }
  return 1 / curvature
}
