import { median } from '../../numeric/index.ts'
import { chiSquaredCdf, chiSquaredQuantile } from '../chiSquared.ts'

/** A mean and a standard deviation that a few far values hardly move. */
export interface RobustMean {
  readonly mean: number
  readonly deviation: number
  readonly iterations: number
  readonly end: 'converged' | 'stepLimit'
}

const mostRounds = 1000

/**
 * Algorithm A of ISO 5725-5:1998 (5.2): from the median and 1.483 times the median deviation, values are pulled in to within 1.5
 * deviations and mean and deviation (times 1.134) taken anew, until they stay. `rounds` stops it earlier.
 */
export function robustMean(values: readonly number[], rounds = mostRounds): RobustMean {
  if (!(values.length >= 2)) throw new RangeError(`a robust mean needs two or more values, got ${values.length}`)
  let mean = median(values)
  let deviation = 1.483 * median(values.map((value) => Math.abs(value - mean)))
  for (let iterations = 1; iterations <= rounds; iterations++) {
    const reach = 1.5 * deviation
    const pulled = values.map((value) => Math.min(mean + reach, Math.max(mean - reach, value)))
    const next = pulled.reduce((sum, value) => sum + value, 0) / pulled.length
    const squares = pulled.reduce((sum, value) => sum + (value - next) ** 2, 0)
    const spread = 1.134 * Math.sqrt(squares / (pulled.length - 1))
    const moved = Math.abs(next - mean) + Math.abs(spread - deviation)
    mean = next
    deviation = spread
    if (moved <= 1e-12 * (Math.abs(mean) + deviation)) return { mean, deviation, iterations, end: 'converged' }
  }
  return { mean, deviation, iterations: rounds, end: 'stepLimit' }
}

/**
 * Algorithm S of ISO 5725-5:1998 (5.3): a pooled standard deviation from those of the cells, each of `freedom` degrees of freedom, with
 * the large ones pulled in to the limit η, and the adjustment ξ that keeps it right for normal results.
 */
export function robustDeviation(deviations: readonly number[], freedom: number): number {
  if (!(deviations.length >= 2 && freedom >= 1)) {
    throw new RangeError(
      `a robust deviation needs two cells and degrees of freedom, got ${deviations.length} and ${freedom}`,
    )
  }
  const limit = Math.sqrt(chiSquaredQuantile(0.9, freedom) / freedom)
  // E(min(s², η²σ²)) = σ²(P(χ²_{ν+2} ≤ νη²) + η²·0.1) for normal results.
  const share = chiSquaredCdf(freedom * limit * limit, freedom + 2) + 0.1 * limit * limit
  const adjustment = 1 / Math.sqrt(share)
  let pooled = median(deviations)
  for (let round = 0; round < mostRounds; round++) {
    const squares = deviations.reduce((sum, s) => sum + Math.min(s, limit * pooled) ** 2, 0)
    const next = adjustment * Math.sqrt(squares / deviations.length)
    if (Math.abs(next - pooled) <= 1e-13 * pooled) return next
    pooled = next
  }
  return pooled
}
