/**
 * Householder QR with column pivoting, A P = Q R (Golub & Van Loan 2013, algorithm 5.4.1), in memory of its own that is
 * used again and again. Fill `values` by columns, entry (i, j) at j·rows + i, then call `factor`. Pivoting compares
 * column norms, so scale the columns first.
 */
export class PivotedQr {
  /** The matrix before `factor`; Householder vectors and R above the diagonal after it. */
  readonly values: Float64Array
  /** Diagonal of R, falling in size. */
  readonly diagonal: Float64Array
  /** `order[j]` is the original column that stands at place j. */
  readonly order: Int32Array
  rows = 0
  columns = 0
  private readonly left: Float64Array

  constructor(mostRows: number, mostColumns: number) {
    if (!(mostRows >= mostColumns && mostColumns >= 1)) {
      throw new RangeError(`a least-squares matrix needs rows ≥ columns ≥ 1, got ${mostRows} × ${mostColumns}`)
    }
    this.values = new Float64Array(mostRows * mostColumns)
    this.diagonal = new Float64Array(mostColumns)
    this.order = new Int32Array(mostColumns)
    this.left = new Float64Array(mostColumns)
  }

  factor(rows: number, columns: number): void {
    if (!(rows >= columns && columns >= 1 && rows * columns <= this.values.length)) {
      throw new RangeError(`no room for ${rows} × ${columns} values among ${this.values.length}`)
    }
    this.rows = rows
    this.columns = columns
    for (let j = 0; j < columns; j++) {
      this.order[j] = j
      this.left[j] = this.squaredNorm(j, 0)
    }
    for (let k = 0; k < columns; k++) {
      this.bringLongest(k)
      this.reflect(k)
    }
  }

  /** Number of columns that are independent: those with |R_kk| above `tolerance` |R_00|. */
  rank(tolerance: number): number {
    const least = tolerance * Math.abs(this.diagonal[0])
    let rank = 0
    while (rank < this.columns && Math.abs(this.diagonal[rank]) > least) rank++
    return rank
  }

  /** Replaces b by Qᵀ b. */
  applyTransposed(b: Float64Array): void {
    for (let k = 0; k < this.columns; k++) this.reflectVector(k, b)
  }

  /** Replaces b by Q b. */
  apply(b: Float64Array): void {
    for (let k = this.columns - 1; k >= 0; k--) this.reflectVector(k, b)
  }

  /** Solves R₁₁ x = b in place for the first `rank` places; x stays in pivoted order. */
  backSubstitute(b: Float64Array, rank: number): void {
    for (let k = rank - 1; k >= 0; k--) {
      b[k] /= this.diagonal[k]
      for (let i = 0; i < k; i++) b[i] -= b[k] * this.values[k * this.rows + i]
    }
  }

  /** Solves R₁₁ᵀ x = b in place for the first `rank` places, in pivoted order. */
  forwardSubstitute(b: Float64Array, rank: number): void {
    for (let k = 0; k < rank; k++) {
      for (let i = 0; i < k; i++) b[k] -= this.values[k * this.rows + i] * b[i]
      b[k] /= this.diagonal[k]
    }
  }

  /**
   * (AᵀA)⁻¹ = R⁻¹R⁻ᵀ in original order, row by row, over the first `rank` pivoted columns; zero in the rows and columns
   * of the others.
   */
  inverseGram(rank: number): Float64Array {
    const inverse = this.inverseOfR(rank)
    const out = new Float64Array(this.columns * this.columns)
    for (let a = 0; a < rank; a++) {
      for (let b = 0; b <= a; b++) {
        let sum = 0
        for (let k = a; k < rank; k++) sum += inverse[a * rank + k] * inverse[b * rank + k]
        out[this.order[a] * this.columns + this.order[b]] = sum
        out[this.order[b] * this.columns + this.order[a]] = sum
      }
    }
    return out
  }

  /** R⁻¹ over the first `rank` places, row by row. */
  private inverseOfR(rank: number): Float64Array {
    const inverse = new Float64Array(rank * rank)
    const column = new Float64Array(rank)
    for (let j = 0; j < rank; j++) {
      column.fill(0)
      column[j] = 1
      this.backSubstitute(column, j + 1)
      for (let i = 0; i <= j; i++) inverse[i * rank + j] = column[i]
    }
    return inverse
  }

  private squaredNorm(j: number, from: number): number {
    let sum = 0
    for (let i = j * this.rows + from; i < (j + 1) * this.rows; i++) sum += this.values[i] * this.values[i]
    return sum
  }

  private bringLongest(k: number): void {
    let best = k
    for (let j = k + 1; j < this.columns; j++) if (this.left[j] > this.left[best]) best = j
    if (best === k) return
    for (let i = 0; i < this.rows; i++) {
      const held = this.values[k * this.rows + i]
      this.values[k * this.rows + i] = this.values[best * this.rows + i]
      this.values[best * this.rows + i] = held
    }
    const held = this.order[k]
    this.order[k] = this.order[best]
    this.order[best] = held
    this.left[best] = this.left[k]
  }

  /** Makes the reflection of column k (LINPACK's form, vector with v_k = 1 + |a_k|/norm) and applies it to the rest. */
  private reflect(k: number): void {
    const { values, rows, columns } = this
    const at = k * rows
    const norm = Math.sqrt(this.squaredNorm(k, k))
    if (norm === 0) {
      this.diagonal[k] = 0
      return
    }
    const signed = values[at + k] < 0 ? -norm : norm
    for (let i = k; i < rows; i++) values[at + i] /= signed
    values[at + k] += 1
    this.diagonal[k] = -signed
    for (let j = k + 1; j < columns; j++) {
      const to = j * rows
      let sum = 0
      for (let i = k; i < rows; i++) sum += values[at + i] * values[to + i]
      const by = -sum / values[at + k]
      for (let i = k; i < rows; i++) values[to + i] += by * values[at + i]
      // Computed anew, not downdated: these matrices have few columns, and downdating loses digits.
      this.left[j] = this.squaredNorm(j, k + 1)
    }
  }

  private reflectVector(k: number, b: Float64Array): void {
    const { values, rows } = this
    const at = k * rows
    if (this.diagonal[k] === 0) return
    let sum = 0
    for (let i = k; i < rows; i++) sum += values[at + i] * b[i]
    const by = -sum / values[at + k]
    for (let i = k; i < rows; i++) b[i] += by * values[at + i]
  }
}
