import { median, percentileOfSorted } from '../numeric/index.ts'
import { discordantProbabilities, kendallVariance } from './kendallScore.ts'
import { normalQuantile } from './normal.ts'
import { tieGroups } from './tieGroups.ts'

/** A straight line that outliers do not pull. */
export interface TheilSenLine {
  readonly slope: number
  /** median(y − slope·x), so that half of the points lie above the line. Not median(y) − slope·median(x). */
  readonly intercept: number
  /** Interval of the slope; infinite where there are too few points for the confidence asked. */
  readonly low: number
  readonly high: number
  /** Confidence that the interval has: at least the one asked, from the exact distribution up to 50 points without ties. */
  readonly coverage: number
}

const mostExact = 50

/** Median of the slopes of all pairs with different x (Theil 1950), its interval by Kendall's score (Sen 1968, JASA 63:1379). */
export function theilSen(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  { confidence = 0.95 }: { readonly confidence?: number } = {},
): TheilSenLine {
  if (!(x.length >= 2 && x.length === y.length)) {
    throw new RangeError(`theilSen needs two equally long lists of two or more, got ${x.length} and ${y.length}`)
  }
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`confidence must lie between 0 and 1, got ${confidence}`)
  const slopes = pairSlopes(x, y)
  if (slopes.length === 0) throw new RangeError('theilSen needs two different x, all are equal')
  const slope = percentileOfSorted(slopes, 0.5, 7)
  const intercept = median(Float64Array.from(y, (value, i) => value - slope * x[i]))
  const ties = tieGroups(x)
  const { rank, coverage } =
    ties.length === 0 && x.length <= mostExact
      ? exactRank(x.length, confidence)
      : normalRank(slopes.length, Math.sqrt(kendallVariance(x.length, ties)), confidence)
  return {
    slope,
    intercept,
    low: rank > 0 ? slopes[rank - 1] : Number.NEGATIVE_INFINITY,
    high: rank > 0 ? slopes[slopes.length - rank] : Number.POSITIVE_INFINITY,
    coverage,
  }
}

function pairSlopes(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const slopes = new Float64Array((x.length * (x.length - 1)) / 2)
  let used = 0
  for (let j = 1; j < x.length; j++) {
    for (let i = 0; i < j; i++) {
      if (x[i] !== x[j]) slopes[used++] = (y[j] - y[i]) / (x[j] - x[i])
    }
  }
  return slopes.subarray(0, used).sort()
}

/** The rank from either end that makes the shortest interval of at least the confidence asked; 0 for none. */
interface RankChoice {
  readonly rank: number
  readonly coverage: number
}

function exactRank(count: number, confidence: number): RankChoice {
  const probabilities = discordantProbabilities(count)
  let rank = 0
  let below = 0
  while (1 - 2 * (below + probabilities[rank]) >= confidence) below += probabilities[rank++]
  return { rank, coverage: 1 - 2 * below }
}

function normalRank(slopes: number, deviation: number, confidence: number): RankChoice {
  const reach = normalQuantile((1 + confidence) / 2) * deviation
  const rank = Math.max(0, Math.floor((slopes - reach) / 2))
  return { rank, coverage: rank > 0 ? confidence : 1 }
}
