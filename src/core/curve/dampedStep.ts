import { PivotedQr } from '../numeric/index.ts'

/**
 * The Levenberg–Marquardt step: minimises |r + J p|² + λ |S p|² over the free parameters by Householder QR of the scaled
 * Jacobian and then of R over √λ·I (Moré 1978), so that a new λ costs a few small rotations and no normal matrix is made.
 */
export class DampedStep {
  private readonly qr: PivotedQr
  private readonly small: PivotedQr
  private readonly target: Float64Array
  private readonly right: Float64Array
  private columns = 0

  constructor(mostRows: number, mostColumns: number) {
    this.qr = new PivotedQr(Math.max(mostRows, mostColumns), mostColumns)
    this.small = new PivotedQr(2 * mostColumns, mostColumns)
    this.target = new Float64Array(Math.max(mostRows, mostColumns))
    this.right = new Float64Array(2 * mostColumns)
  }

  /** Factors the Jacobian (by columns) of the first `free.length` parameters named in `free`, each over its scale. */
  prepare({ jacobian, residuals, rows, free, count, scale }: Linearised): void {
    // Fewer rows than free parameters: rows of zeroes make the system square, and damping makes it solvable.
    const height = Math.max(rows, count)
    const { values } = this.qr
    for (let k = 0; k < count; k++) {
      const from = free[k] * rows
      const by = 1 / scale[free[k]]
      for (let i = 0; i < rows; i++) values[k * height + i] = jacobian[from + i] * by
      for (let i = rows; i < height; i++) values[k * height + i] = 0
    }
    this.columns = count
    this.qr.factor(height, count)
    for (let i = 0; i < rows; i++) this.target[i] = -residuals[i]
    this.target.fill(0, rows, height)
    this.qr.applyTransposed(this.target)
  }

  /** Writes the step of each free parameter, in scaled units, to the first places of `out`. */
  solve(damping: number, out: Float64Array): void {
    const { qr, small, right, columns } = this
    const height = 2 * columns
    const root = Math.sqrt(damping)
    small.values.fill(0, 0, height * columns)
    for (let k = 0; k < columns; k++) {
      for (let i = 0; i < k; i++) small.values[k * height + i] = qr.values[k * qr.rows + i]
      small.values[k * height + k] = qr.diagonal[k]
      small.values[k * height + columns + k] = root
      right[k] = this.target[k]
      right[columns + k] = 0
    }
    small.factor(height, columns)
    small.applyTransposed(right)
    small.backSubstitute(right, columns)
    for (let k = 0; k < columns; k++) out[qr.order[small.order[k]]] = right[k]
  }
}

/** A problem made linear at a point. */
export interface Linearised {
  readonly jacobian: Float64Array
  readonly residuals: Float64Array
  readonly rows: number
  /** Indices of the parameters that may move, the first `count` places. */
  readonly free: Int32Array
  readonly count: number
  /** Size of each Jacobian column, all parameters. */
  readonly scale: Float64Array
}
