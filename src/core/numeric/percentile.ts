/** Definitions of a sample quantile by Hyndman & Fan 1996 (Am. Stat. 50:361), by their number. */
export type PercentileType = 7 | 8

/**
 * Quantile of values in rising order, `share` from 0 to 1, between neighbours by a straight line. Type 7 puts the k-th of
 * n values at (k − 1)/(n − 1); type 8 at (k − 1/3)/(n + 1/3), which is nearly unbiased for the median whatever the
 * distribution and is what Hyndman & Fan recommend.
 */
export function percentileOfSorted(sorted: ArrayLike<number>, share: number, type: PercentileType = 8): number {
  const count = sorted.length
  if (!(count >= 1)) throw new RangeError('percentile needs at least one value, got none')
  if (!(share >= 0 && share <= 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`)
  const rank = type === 7 ? (count - 1) * share : (count + 1 / 3) * share - 2 / 3
  const within = Math.min(Math.max(rank, 0), count - 1)
  const below = Math.floor(within)
  const above = Math.min(below + 1, count - 1)
  const part = within - below
  return part === 0 ? sorted[below] : sorted[below] + part * (sorted[above] - sorted[below])
}

/** Quantile of values in any order; see `percentileOfSorted`. */
export const percentile = (values: ArrayLike<number>, share: number, type: PercentileType = 8): number =>
  percentileOfSorted(Float64Array.from(values).sort(), share, type)

/** Middle value, or the mean of the middle two; every definition gives the same. */
export const median = (values: ArrayLike<number>): number => percentile(values, 0.5, 7)
