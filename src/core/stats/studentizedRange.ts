import { findRoot } from '../numeric/index.ts'
import { overChi } from './noncentralT.ts'
import { normalCdf, normalDensity } from './normal.ts'
import { probabilityChecked } from './probabilityChecked.ts'

/** Number of means compared, and ν of the standard deviation that the range is divided by; Infinity where it is known. */
export interface RangeSetting {
  readonly groups: number
  readonly degreesOfFreedom: number
}

// Trapezoid rule over the largest of the values. The integrand is analytic and falls off at both ends; halving the step
// changes nothing above 1e-12 up to 200 groups.
const step = 0.125
const reach = 8.5
const places = Float64Array.from({ length: (2 * reach) / step + 1 }, (_, i) => i * step - reach)
const densities = places.map((z) => normalDensity(z) * step)
const below = places.map((z) => normalCdf(z))

/** Probability that the studentized range of `groups` normal values is at most q (Student 1927; Copenhaver & Holland 1988). */
export function studentizedRangeCdf(q: number, { groups, degreesOfFreedom }: RangeSetting): number {
  if (!(Number.isInteger(groups) && groups >= 2))
    throw new RangeError(`groups must be a whole number from 2, got ${groups}`)
  if (!(q >= 0)) throw new RangeError(`q must be zero or more, got ${q}`)
  if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${degreesOfFreedom}`)
  if (q === Number.POSITIVE_INFINITY) return 1
  const range = (s: number): number => rangeCdf(q * s, groups)
  const known = degreesOfFreedom === Number.POSITIVE_INFINITY
  return Math.min(1, known ? range(1) : overChi(range, { degreesOfFreedom, sharpness: 16 }))
}

/** Quantile of the studentized range, for Tukey's comparison of all pairs. Relative error under 1e-9. */
export function studentizedRangeQuantile(probability: number, setting: RangeSetting): number {
  probabilityChecked(probability)
  if (probability === 0) return 0
  if (probability === 1) return Number.POSITIVE_INFINITY
  const gap = (logQ: number): number => studentizedRangeCdf(Math.exp(logQ), setting) - probability
  let low = -1
  while (gap(low) > 0) low -= 2
  let high = Math.max(low, 1) + 1
  while (gap(high) < 0) high += 2
  return Math.exp(findRoot(gap, [low, high], { tolerance: 1e-10 }).at)
}

/** Range of values of known deviation one: k ∫ φ(z)[Φ(z) − Φ(z − w)]^(k−1) dz. */
function rangeCdf(w: number, groups: number): number {
  let sum = 0
  for (let i = 0; i < places.length; i++) {
    sum += densities[i] * (below[i] - normalCdf(places[i] - w)) ** (groups - 1)
  }
  return groups * sum
}
