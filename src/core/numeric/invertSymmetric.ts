export interface SymmetricInverse {
  /** Row-major. */
  readonly inverse: Float64Array
  readonly logDeterminant: number
}

/** A pivot that has lost this much of its diagonal is rounding. */
const smallestPivot = 1e-13

/**
 * Inverse and log determinant of a small symmetric positive definite matrix, by Cholesky after scaling to a unit
 * diagonal. Undefined where the matrix is not positive definite to rounding.
 *
 * @param matrix row-major, `size`²
 */
export function invertSymmetric(matrix: Float64Array, size: number): SymmetricInverse | undefined {
  const scale = Float64Array.from({ length: size }, (_, i) => Math.sqrt(matrix[i * size + i]))
  const factor = choleskyOf(matrix, scale)
  if (factor === undefined) return undefined
  let logDeterminant = 0
  for (let i = 0; i < size; i++) logDeterminant += 2 * (Math.log(factor[i * size + i]) + Math.log(scale[i]))
  const lower = invertLower(factor, size)
  const inverse = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0
      for (let k = a; k < size; k++) sum += lower[k * size + a] * lower[k * size + b]
      inverse[a * size + b] = inverse[b * size + a] = sum / (scale[a] * scale[b])
    }
  }
  return { inverse, logDeterminant }
}

function choleskyOf(matrix: Float64Array, scale: Float64Array): Float64Array | undefined {
  const size = scale.length
  const factor = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    if (!(scale[a] > 0)) return undefined
    for (let b = 0; b <= a; b++) {
      let sum = matrix[a * size + b] / (scale[a] * scale[b])
      for (let k = 0; k < b; k++) sum -= factor[a * size + k] * factor[b * size + k]
      if (a === b) {
        if (!(sum > smallestPivot)) return undefined
        factor[a * size + a] = Math.sqrt(sum)
      } else factor[a * size + b] = sum / factor[b * size + b]
    }
  }
  return factor
}

function invertLower(factor: Float64Array, size: number): Float64Array {
  const lower = new Float64Array(size * size)
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
