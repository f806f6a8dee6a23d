import { discordantProbabilities, kendallScore, kendallVariance, kendallZ } from './kendallScore.ts'
import { normalCdf } from './normal.ts'
import { tieGroups } from './tieGroups.ts'

/** Rank correlation of two variables. */
export interface KendallCorrelation {
  /** τ_b: score over √(pairs untied in x · pairs untied in y); τ_a where nothing is tied. */
  readonly tau: number
  readonly score: number
  /** Two-sided probability of a score this far from zero when nothing is related. */
  readonly p: number
  /** Exact up to 50 pairs of values without ties, else normal with continuity correction. */
  readonly exact: boolean
}

const mostExact = 50

/** Kendall's rank correlation (Kendall 1938, 1945 for ties). */
export function kendall(x: ArrayLike<number>, y: ArrayLike<number>): KendallCorrelation {
  const count = x.length
  if (!(count >= 2 && y.length === count)) {
    throw new RangeError(`kendall needs two equally long lists of two or more, got ${count} and ${y.length}`)
  }
  const score = kendallScore(x, y)
  const ties = [tieGroups(x), tieGroups(y)]
  const [inX, inY] = ties.map((sizes) => sizes.reduce((sum, t) => sum + (t * (t - 1)) / 2, 0))
  const pairs = (count * (count - 1)) / 2
  const tau = score / Math.sqrt((pairs - inX) * (pairs - inY))
  const exact = inX === 0 && inY === 0 && count <= mostExact
  const p = exact
    ? exactTwoSided(score, count)
    : 2 * normalCdf(-Math.abs(kendallZ(score, kendallVariance(count, ties[0], ties[1]))))
  return { tau, score, p, exact }
}

function exactTwoSided(score: number, count: number): number {
  const probabilities = discordantProbabilities(count)
  const fewest = (probabilities.length - 1 - Math.abs(score)) / 2
  return Math.min(1, 2 * probabilities.subarray(0, fewest + 1).reduce((a, b) => a + b, 0))
}
