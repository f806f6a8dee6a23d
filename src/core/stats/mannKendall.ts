import { kendallScore, kendallVariance, kendallZ } from './kendallScore.ts'
import { normalCdf } from './normal.ts'
import { tieGroups } from './tieGroups.ts'

/** Finding on whether a series rises or falls. */
export interface Trend {
  /** Rising pairs less falling pairs. */
  readonly score: number
  /** Of the score, had the series no trend. */
  readonly variance: number
  /** With continuity correction. */
  readonly z: number
  /** Two-sided, normal. */
  readonly p: number
}

/**
 * Trend test of Mann 1945 and Kendall, with ties and continuity correction. Assumes independent values: give it block
 * means longer than the autocorrelation time. Takes every pair, so its time grows with the square of the length.
 */
export function mannKendall(values: ArrayLike<number>): Trend {
  const count = values.length
  if (!(count >= 2)) throw new RangeError(`a trend needs at least two values, got ${count}`)
  const score = kendallScore(
    Float64Array.from({ length: count }, (_, i) => i),
    values,
  )
  const variance = kendallVariance(count, tieGroups(values))
  const z = kendallZ(score, variance)
  return { score, variance, z, p: 2 * normalCdf(-Math.abs(z)) }
}
