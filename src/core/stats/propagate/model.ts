import type { Distribution } from './distribution.ts'

/** Correlation between two inputs, by their places. */
export interface InputCorrelation {
  readonly first: number
  readonly second: number
  /** −1 to 1. */
  readonly coefficient: number
}

/**
 * A measurement model: one result as a function of its inputs. `sensitivities` may be given where they are known; otherwise
 * they are differences of the function.
 */
export interface MeasurementModel {
  readonly inputs: readonly Distribution[]
  readonly evaluate: (values: ArrayLike<number>) => number
  readonly correlations?: readonly InputCorrelation[]
  /** ∂result/∂input at the estimates, in the order of the inputs. */
  readonly sensitivities?: readonly number[]
}

/** Correlation matrix of the inputs, row by row. Throws RangeError for places and coefficients that cannot be. */
export function correlationMatrix(count: number, correlations: readonly InputCorrelation[]): Float64Array {
  const matrix = new Float64Array(count * count)
  for (let i = 0; i < count; i++) matrix[i * count + i] = 1
  for (const { first, second, coefficient } of correlations) {
    const places = first >= 0 && second >= 0 && first < count && second < count && first !== second
    if (!(places && Math.abs(coefficient) <= 1)) {
      throw new RangeError(
        `a correlation joins two of ${count} inputs with −1 to 1, got ${first}, ${second}, ${coefficient}`,
      )
    }
    matrix[first * count + second] = matrix[second * count + first] = coefficient
  }
  return matrix
}
