/** A pivot that has lost this much of its diagonal is rounding. */
const smallestPivot = 1e-13

/**
 * Lower factor L of a small symmetric positive definite matrix, A = LLᵀ, row-major. Undefined where the matrix is not positive
 * definite to rounding, each pivot held against its own diagonal.
 *
 * @param matrix row-major, `size`²; only the lower half is read
 * @param factor where L goes, for callers in a hurry; above its diagonal nothing is written
 */
export function cholesky(
  matrix: ArrayLike<number>,
  size: number,
  factor: Float64Array = new Float64Array(size * size),
): Float64Array | undefined {
  if (!(matrix.length === size * size)) throw new RangeError(`matrix of size ${size} has ${matrix.length} values`)
  for (let a = 0; a < size; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = matrix[a * size + b]
      for (let k = 0; k < b; k++) sum -= factor[a * size + k] * factor[b * size + k]
      if (a === b) {
        if (!(sum > smallestPivot * matrix[a * size + a])) return undefined
        factor[a * size + a] = Math.sqrt(sum)
      } else factor[a * size + b] = sum / factor[b * size + b]
    }
  }
  return factor
}

/** x with Ax = b for a small symmetric positive definite matrix; undefined where it is not that to rounding. */
export function solveSymmetric(matrix: ArrayLike<number>, right: ArrayLike<number>): Float64Array | undefined {
  const size = right.length
  const factor = cholesky(matrix, size)
  if (factor === undefined) return undefined
  const x = Float64Array.from(right)
  for (let a = 0; a < size; a++) {
    for (let k = 0; k < a; k++) x[a] -= factor[a * size + k] * x[k]
    x[a] /= factor[a * size + a]
  }
  for (let a = size - 1; a >= 0; a--) {
    for (let k = a + 1; k < size; k++) x[a] -= factor[k * size + a] * x[k]
    x[a] /= factor[a * size + a]
  }
  return x
}
