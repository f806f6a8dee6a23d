import { cholesky } from './cholesky.ts'

/** Inverse of a symmetric matrix and what the way there gave for nothing. */
export interface SymmetricInverse {
  /** Row-major. */
  readonly inverse: Float64Array
  readonly logDeterminant: number
}

/**
 * Inverse and log determinant of a small symmetric positive definite matrix, by its Cholesky factor. Undefined where the
 * matrix is not positive definite to rounding.
 *
 * @param matrix row-major, `size`²
 */
export function invertSymmetric(matrix: Float64Array, size: number): SymmetricInverse | undefined {
  const factor = cholesky(matrix, size)
  if (factor === undefined) return undefined
  let logDeterminant = 0
  for (let i = 0; i < size; i++) logDeterminant += 2 * Math.log(factor[i * size + i])
  const lower = invertLower(factor, size)
  const inverse = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0
      for (let k = a; k < size; k++) sum += lower[k * size + a] * lower[k * size + b]
      inverse[a * size + b] = inverse[b * size + a] = sum
    }
  }
  return { inverse, logDeterminant }
}

/**
 * Inverse of a lower triangular matrix.
 *
 * @param factor row-major, `size`²; only the lower half is read
 * @param lower where the inverse goes, for callers in a hurry; above its diagonal nothing is written
 */
export function invertLower(
  factor: Float64Array,
  size: number,
  lower: Float64Array = new Float64Array(size * size),
): Float64Array {
  for (let a = 0; a < size; a++) {
    lower[a * size + a] = 1 / factor[a * size + a]
    for (let b = 0; b < a; b++) {
      let sum = 0
      for (let k = b; k < a; k++) sum += factor[a * size + k] * lower[k * size + b]
      lower[a * size + b] = -sum / factor[a * size + a]
    }
  }
  return lower
}
