import { compensatedSum } from '../numeric/index.ts'
import { deviationsOf } from './deviations.ts'

/** What a set of readings says at first sight. */
export interface Summary {
  readonly count: number
  readonly mean: number
  /** With count − 1; NaN for a single value. */
  readonly standardDeviation: number
  /** Σ of products of neighbours' deviations over Σ of squared deviations; NaN where all values are equal. */
  readonly lagOneCorrelation: number
}

/** Mean, standard deviation and lag-one autocorrelation in two passes, the second on the deviations. */
export function summary(values: ArrayLike<number>): Summary {
  const { mean, deviations } = deviationsOf(values)
  const count = deviations.length
  let squares = deviations[0] * deviations[0]
  let products = 0
  for (let i = 1; i < count; i++) {
    squares += deviations[i] * deviations[i]
    products += deviations[i] * deviations[i - 1]
  }
  return {
    count,
    mean,
    standardDeviation: count > 1 ? Math.sqrt(squares / (count - 1)) : Number.NaN,
    lagOneCorrelation: products / squares,
  }
}

/** Arithmetic mean. */
export function mean(values: ArrayLike<number>): number {
  if (!(values.length >= 1)) throw new RangeError('a mean needs at least one value, got none')
  return compensatedSum(values) / values.length
}
