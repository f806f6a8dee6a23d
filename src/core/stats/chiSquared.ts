import { gammaLogQuantile, incompleteGamma } from './incompleteGamma.ts'
import { normalQuantile } from './normal.ts'
import { probabilityChecked } from './probabilityChecked.ts'

/** Probability that χ² with ν > 0 degrees of freedom is at most x. */
export const chiSquaredCdf = (x: number, degreesOfFreedom: number): number =>
  incompleteGamma(degreesOfFreedom / 2, x / 2).lower

/** Probability that χ² is above x, with full precision where small. */
export const chiSquaredUpper = (x: number, degreesOfFreedom: number): number =>
  incompleteGamma(degreesOfFreedom / 2, x / 2).upper

/** Quantile of χ² with ν > 0 degrees of freedom. Start by Wilson & Hilferty 1931, then Halley steps. */
export function chiSquaredQuantile(probability: number, degreesOfFreedom: number): number {
  probabilityChecked(probability)
  if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${degreesOfFreedom}`)
  if (probability === 0) return 0
  if (probability === 1) return Number.POSITIVE_INFINITY
  const shape = degreesOfFreedom / 2
  const root = 1 - 1 / (9 * shape) + normalQuantile(probability) / (3 * Math.sqrt(shape))
  const start = root > 0.3 ? Math.log(shape) + 3 * Math.log(root) : undefined
  const side = probability <= 0.5 ? 'lower' : 'upper'
  const tail = probability <= 0.5 ? probability : 1 - probability
  return 2 * Math.exp(gammaLogQuantile(side, tail, { shape, start }))
}
