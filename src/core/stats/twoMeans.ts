import { studentTCdf, studentTQuantile } from './studentT.ts'
import { summary } from './summary.ts'

/** Two samples as they are usually told. */
export interface SampleNumbers {
  readonly mean: number
  readonly standardDeviation: number
  readonly count: number
}

/** A difference of means with what is needed to judge it. */
export interface MeanDifference {
  /** First less second. */
  readonly difference: number
  readonly standardError: number
  readonly degreesOfFreedom: number
}

/** Welch's difference of two means: each sample has its own variance, degrees of freedom by Satterthwaite (Welch 1947). */
export function welchDifference(first: SampleNumbers, second: SampleNumbers): MeanDifference {
  const [a, b] = [partOf(first), partOf(second)]
  const variance = a + b
  return {
    difference: first.mean - second.mean,
    standardError: Math.sqrt(variance),
    degreesOfFreedom: variance ** 2 / (a ** 2 / (first.count - 1) + b ** 2 / (second.count - 1)),
  }
}

/** Student's difference of two means: both samples share one variance. */
export function pooledDifference(first: SampleNumbers, second: SampleNumbers): MeanDifference {
  partOf(first)
  partOf(second)
  const degreesOfFreedom = first.count + second.count - 2
  const squares = (first.count - 1) * first.standardDeviation ** 2 + (second.count - 1) * second.standardDeviation ** 2
  return {
    difference: first.mean - second.mean,
    standardError: Math.sqrt((squares / degreesOfFreedom) * (1 / first.count + 1 / second.count)),
    degreesOfFreedom,
  }
}

/** Difference of two readings of the same things: the mean of the differences. */
export function pairedDifference(first: readonly number[], second: readonly number[]): MeanDifference {
  if (!(first.length === second.length && first.length >= 2)) {
    throw new RangeError(`pairs must be two or more, got ${first.length} and ${second.length} values`)
  }
  const { mean, standardDeviation, count } = summary(first.map((value, i) => value - second[i]))
  return { difference: mean, standardError: standardDeviation / Math.sqrt(count), degreesOfFreedom: count - 1 }
}

/** Two-sided test that a difference is zero. p is 1 where neither differs nor scatters. */
export function tTest({ difference, standardError, degreesOfFreedom }: MeanDifference): {
  readonly t: number
  readonly p: number
} {
  const t = difference === 0 ? 0 : difference / standardError
  return { t, p: Math.min(1, 2 * studentTCdf(-Math.abs(t), degreesOfFreedom)) }
}

/** Two one-sided tests that a difference lies inside margins (Schuirmann 1987). */
export interface EquivalenceResult {
  /** Against the lower and the upper margin. */
  readonly t: readonly [number, number]
  readonly p: readonly [number, number]
  /** The interval whose lying inside the margins says the same at this significance: 1 − 2α. */
  readonly interval: readonly [number, number]
  readonly equivalent: boolean
}

/** Tests whether a difference lies inside [low, high], each side at `significance`. */
export function equivalenceTest(
  found: MeanDifference,
  [low, high]: readonly [number, number],
  significance = 0.05,
): EquivalenceResult {
  if (!(high > low)) throw new RangeError(`margins must rise, got ${low} and ${high}`)
  const { difference, standardError, degreesOfFreedom } = found
  const t = [(difference - low) / standardError, (difference - high) / standardError] as const
  const p = [studentTCdf(-t[0], degreesOfFreedom), studentTCdf(t[1], degreesOfFreedom)] as const
  const half = studentTQuantile(1 - significance, degreesOfFreedom) * standardError
  const interval = [difference - half, difference + half] as const
  return { t, p, interval, equivalent: interval[0] > low && interval[1] < high }
}

function partOf({ standardDeviation, count }: SampleNumbers): number {
  if (!(Number.isInteger(count) && count >= 2))
    throw new RangeError(`count must be a whole number from 2, got ${count}`)
  if (!(standardDeviation >= 0))
    throw new RangeError(`standard deviation must be zero or more, got ${standardDeviation}`)
  return standardDeviation ** 2 / count
}
