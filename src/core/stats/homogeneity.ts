import { median } from '../numeric/index.ts'
import { chiSquaredUpper } from './chiSquared.ts'
import { oneWayAnova } from './oneWayAnova.ts'
import { summary } from './summary.ts'

/** A test that several groups scatter alike. */
export interface Homogeneity {
  readonly statistic: number
  /** Probability of a larger statistic where they do. */
  readonly p: number
}

/** Bartlett's test of equal variances (Bartlett 1937): sharp in normal data, misled by others. Each group needs two values. */
export function bartlett(groups: readonly (readonly number[])[]): Homogeneity {
  if (!(groups.length >= 2 && groups.every((group) => group.length >= 2))) {
    throw new RangeError(`groups must be two or more, each of two or more values, got sizes ${sizes(groups)}`)
  }
  const freedom = groups.map((group) => group.length - 1)
  const variances = groups.map((group) => summary(group).standardDeviation ** 2)
  const total = freedom.reduce((a, b) => a + b, 0)
  const pooled = variances.reduce((sum, variance, g) => sum + freedom[g] * variance, 0) / total
  const logs = variances.reduce((sum, variance, g) => sum + freedom[g] * Math.log(variance), 0)
  const reciprocals = freedom.reduce((sum, nu) => sum + 1 / nu, 0)
  const correction = 1 + (reciprocals - 1 / total) / (3 * (groups.length - 1))
  const statistic = (total * Math.log(pooled) - logs) / correction
  return { statistic, p: chiSquaredUpper(Math.max(0, statistic), groups.length - 1) }
}

/** Levene's test of equal scatter on distances from the medians (Brown & Forsythe 1974): bears data that are not normal. */
export function levene(groups: readonly (readonly number[])[]): Homogeneity {
  const distances = groups.map((group) => {
    const middle = median(group)
    return group.map((value) => Math.abs(value - middle))
  })
  const { f, p } = oneWayAnova(distances)
  return { statistic: f, p }
}

const sizes = (groups: readonly (readonly number[])[]): string => groups.map((group) => group.length).join(', ')
