import { deviationsOf } from './deviations.ts'

/** A ratio of two means taken on the same samples. */
export interface MeanRatio {
  readonly ratio: number
  /** Delta method. */
  readonly standardUncertainty: number
}

/**
 * mean(y)/mean(x) of paired samples and its standard uncertainty by the delta method: that of the mean of y − ratio·x, over mean(x).
 * Unlike the mean of the ratios it is not biased by the noise of x (to order 1/n). For correlated samples give their
 * autocorrelation time τ = 1 + 2Σρ, which multiplies the variance.
 */
export function ratioOfMeans(
  y: ArrayLike<number>,
  x: ArrayLike<number>,
  { autocorrelationTime = 1 }: { readonly autocorrelationTime?: number } = {},
): MeanRatio {
  const count = y.length
  if (!(count >= 2 && x.length === count)) {
    throw new RangeError(`ratioOfMeans needs two equally long lists of two or more, got ${count} and ${x.length}`)
  }
  if (!(autocorrelationTime > 0)) {
    throw new RangeError(`autocorrelation time must be above zero, got ${autocorrelationTime} samples`)
  }
  const above = deviationsOf(y)
  const below = deviationsOf(x)
  const ratio = above.mean / below.mean
  const squares = above.deviations.reduce((sum, d, i) => sum + (d - ratio * below.deviations[i]) ** 2, 0)
  const variance = (squares / (count - 1) / count) * autocorrelationTime
  return { ratio, standardUncertainty: Math.sqrt(variance) / Math.abs(below.mean) }
}
