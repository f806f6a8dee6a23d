/**
 * What is known of an input quantity (JCGM 101:2008, 6.4 and table 1). `value` is its mean unless said otherwise; half-widths
 * and standard deviations are zero or more.
 */
export type Distribution =
  /** Known exactly. */
  | { readonly is: 'exact'; readonly value: number }
  /** `degreesOfFreedom` counts for the law of propagation alone; infinite where left out. */
  | {
      readonly is: 'normal'
      readonly value: number
      readonly standardUncertainty: number
      readonly degreesOfFreedom?: number
    }
  /**
   * Mean of few readings, or an uncertainty from a certificate with its degrees of freedom: a scaled t. Monte Carlo draws from
   * it; its standard deviation is √(ν/(ν−2)) times the scale, so ν must be above 2 to have one.
   */
  | { readonly is: 't'; readonly value: number; readonly scale: number; readonly degreesOfFreedom: number }
  | { readonly is: 'rectangular'; readonly value: number; readonly halfWidth: number }
  /** `topShare` is the width of the level top over that of the base, 0 to 1. */
  | { readonly is: 'trapezoidal'; readonly value: number; readonly halfWidth: number; readonly topShare: number }
  | { readonly is: 'triangular'; readonly value: number; readonly halfWidth: number }
  /** A rectangle whose half-width is itself known within ± `halfWidthHalfWidth` only. */
  | {
      readonly is: 'curvilinearTrapezoidal'
      readonly value: number
      readonly halfWidth: number
      readonly halfWidthHalfWidth: number
    }
  /** Cycles between two ends, seen at no particular moment. */
  | { readonly is: 'arcsine'; readonly value: number; readonly halfWidth: number }
  /** Never below zero, nothing known but its mean. */
  | { readonly is: 'exponential'; readonly value: number }
  /** Mean of a Poisson process after `count` events were seen: gamma with shape count + 1. `value` is not asked. */
  | { readonly is: 'counted'; readonly count: number }

/** Name of one kind of distribution. */
export type DistributionKind = Distribution['is']

/** What is wrong with a distribution, in words; undefined where nothing is. */
export function distributionFault(distribution: Distribution): string | undefined {
  switch (distribution.is) {
    case 'exact':
      return finite(distribution.value)
    case 'normal': {
      const { value, standardUncertainty, degreesOfFreedom = Number.POSITIVE_INFINITY } = distribution
      if (!(degreesOfFreedom > 0)) return `degrees of freedom must be above zero, got ${degreesOfFreedom}`
      return finite(value) ?? notBelowZero(standardUncertainty, 'standard uncertainty')
    }
    case 't':
      if (!(distribution.degreesOfFreedom > 0 && distribution.degreesOfFreedom < Number.POSITIVE_INFINITY))
        return `degrees of freedom must be above zero and finite, got ${distribution.degreesOfFreedom}`
      return finite(distribution.value) ?? notBelowZero(distribution.scale, 'scale')
    case 'trapezoidal':
      if (!(distribution.topShare >= 0 && distribution.topShare <= 1))
        return `the top must be 0 to 1 of the base, got ${distribution.topShare}`
      return finite(distribution.value) ?? notBelowZero(distribution.halfWidth, 'half-width')
    case 'curvilinearTrapezoidal':
      if (!(distribution.halfWidthHalfWidth >= 0 && distribution.halfWidthHalfWidth <= distribution.halfWidth))
        return `a half-width of ${distribution.halfWidth} cannot be known within ± ${distribution.halfWidthHalfWidth}`
      return finite(distribution.value) ?? notBelowZero(distribution.halfWidth, 'half-width')
    case 'rectangular':
    case 'triangular':
    case 'arcsine':
      return finite(distribution.value) ?? notBelowZero(distribution.halfWidth, 'half-width')
    case 'exponential':
      return distribution.value > 0
        ? finite(distribution.value)
        : `the mean must be above zero, got ${distribution.value}`
    case 'counted':
      return Number.isSafeInteger(distribution.count) && distribution.count >= 0
        ? undefined
        : `a count is a whole number, got ${distribution.count}`
  }
}

const finite = (value: number): string | undefined =>
  Number.isFinite(value) ? undefined : `the value must be finite, got ${value}`

const notBelowZero = (size: number, what: string): string | undefined =>
  size >= 0 && size < Number.POSITIVE_INFINITY ? undefined : `the ${what} must be zero or more, got ${size}`
