import type { Distribution } from './distribution.ts'

/** Best estimate, standard uncertainty and degrees of freedom as the law of propagation takes them. */
export interface StandardInput {
  readonly estimate: number
  readonly standardUncertainty: number
  readonly degreesOfFreedom: number
}

/**
 * What the law of propagation makes of a distribution (JCGM 100:2008, 4.3; JCGM 101:2008, 6.4). A t-distribution goes in
 * with its scale and its degrees of freedom, as JCGM 100 has it, not with its standard deviation.
 */
export function standardOf(distribution: Distribution): StandardInput {
  const known = (estimate: number, standardUncertainty: number, degreesOfFreedom = Number.POSITIVE_INFINITY) => ({
    estimate,
    standardUncertainty,
    degreesOfFreedom,
  })
  switch (distribution.is) {
    case 'exact':
      return known(distribution.value, 0)
    case 'normal':
      return known(distribution.value, distribution.standardUncertainty, distribution.degreesOfFreedom)
    case 't':
      return known(distribution.value, distribution.scale, distribution.degreesOfFreedom)
    case 'rectangular':
      return known(distribution.value, distribution.halfWidth / Math.sqrt(3))
    case 'trapezoidal':
      return known(distribution.value, distribution.halfWidth * Math.sqrt((1 + distribution.topShare ** 2) / 6))
    case 'triangular':
      return known(distribution.value, distribution.halfWidth / Math.sqrt(6))
    case 'curvilinearTrapezoidal': {
      const { value, halfWidth, halfWidthHalfWidth } = distribution
      return known(value, Math.sqrt(halfWidth ** 2 / 3 + halfWidthHalfWidth ** 2 / 9))
    }
    case 'arcsine':
      return known(distribution.value, distribution.halfWidth * Math.SQRT1_2)
    case 'exponential':
      return known(distribution.value, distribution.value)
    case 'counted':
      return known(distribution.count + 1, Math.sqrt(distribution.count + 1))
  }
}
