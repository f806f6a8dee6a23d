import { meanInflation } from '../estimate/meanInflation.ts'

/** By how much the variance of a mean of these residuals exceeds that of independent ones, from their lag-one correlation; at least 1. */
export function meanInflationSeen(residuals: ArrayLike<number>): number {
  let same = 0
  let next = 0
  for (let i = 0; i < residuals.length; i++) {
    same += residuals[i] ** 2
    if (i > 0) next += residuals[i] * residuals[i - 1]
  }
  if (!(same > 0)) return 1
  return Math.max(1, meanInflation(Math.min(0.95, Math.max(0, next / same)), residuals.length))
}
