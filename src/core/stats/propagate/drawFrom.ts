import { chiSquaredDraw, type Random } from '../../numeric/index.ts'
import type { Distribution } from './distribution.ts'

/** One draw from a distribution (JCGM 101:2008, 6.4). */
export function drawFrom(distribution: Distribution, random: Random): number {
  switch (distribution.is) {
    case 'exact':
      return distribution.value
    case 'normal':
      return distribution.value + distribution.standardUncertainty * random.normal()
    case 't': {
      const { value, scale, degreesOfFreedom } = distribution
      return value + (scale * random.normal()) / Math.sqrt(chiSquaredDraw(random, degreesOfFreedom) / degreesOfFreedom)
    }
    case 'rectangular':
      return distribution.value + distribution.halfWidth * (2 * random.uniform() - 1)
    case 'trapezoidal': {
      const { value, halfWidth, topShare } = distribution
      const both = (1 + topShare) * random.uniform() + (1 - topShare) * random.uniform()
      return value + halfWidth * (both - 1)
    }
    case 'triangular':
      return distribution.value + distribution.halfWidth * (random.uniform() + random.uniform() - 1)
    case 'curvilinearTrapezoidal': {
      const { value, halfWidth, halfWidthHalfWidth } = distribution
      const width = halfWidth + halfWidthHalfWidth * (2 * random.uniform() - 1)
      return value + width * (2 * random.uniform() - 1)
    }
    case 'arcsine':
      return distribution.value + distribution.halfWidth * Math.sin(2 * Math.PI * random.uniform())
    case 'exponential':
      return -distribution.value * Math.log(1 - random.uniform())
    case 'counted':
      return chiSquaredDraw(random, 2 * (distribution.count + 1)) / 2
  }
}
