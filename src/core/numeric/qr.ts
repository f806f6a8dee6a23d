import { CompensatedDot } from './compensatedDot.ts'
import { PivotedQr } from './pivotedQr.ts'

/** A linear least-squares fit. All arrays are in the order of the columns as given. */
export interface LinearFit {
  readonly coefficients: Float64Array
  /** y − A·coefficients. */
  readonly residuals: Float64Array
  readonly residualSumOfSquares: number
  /** Rows less independent columns. */
  readonly degreesOfFreedom: number
  /** (AᵀA)⁻¹ row by row, from R. Times the variance of one row it is the covariance of the coefficients. */
  readonly inverseGram: Float64Array
  /** Columns that the others already span: their coefficients are held at zero, with zero variance. Look before use. */
  readonly dependent: readonly number[]
}

/** Columns of unit size with less than this left after projection count as dependent. */
const rankTolerance = 1e-14
const refinements = 5

/**
 * Minimises |y − A x|² by pivoted Householder QR on columns scaled to unit size, then refines solution and residual
 * together with residuals in twice the working precision (Björck 1967, BIT 7:257). Never forms AᵀA. For weighted rows
 * multiply columns and y by the square root of the weight first. Throws RangeError for fewer rows than columns, for
 * ragged columns and for values that are not finite.
 */
export function linearLeastSquares(columns: readonly ArrayLike<number>[], y: ArrayLike<number>): LinearFit {
  const rows = y.length
  refuseBadShape(columns, y)
  const scale = columns.map(powerOfTwoNorm)
  const qr = new PivotedQr(rows, columns.length)
  for (let j = 0; j < columns.length; j++) {
    for (let i = 0; i < rows; i++) qr.values[j * rows + i] = columns[j][i] / scale[j]
  }
  qr.factor(rows, columns.length)
  const rank = qr.diagonal[0] === 0 ? 0 : qr.rank(rankTolerance)
  const { solution, residuals } = refined(qr, rank, { columns, scale, y })
  const inverseGram = rank === 0 ? new Float64Array(columns.length ** 2) : qr.inverseGram(rank)
  for (let a = 0; a < columns.length; a++) {
    for (let b = 0; b < columns.length; b++) inverseGram[a * columns.length + b] /= scale[a] * scale[b]
  }
  const squares = new CompensatedDot()
  for (const r of residuals) squares.add(r, r)
  return {
    coefficients: Float64Array.from(solution, (s, j) => s / scale[j]),
    residuals,
    residualSumOfSquares: squares.value,
    degreesOfFreedom: rows - rank,
    inverseGram,
    dependent: Array.from(qr.order.subarray(rank)).sort((a, b) => a - b),
  }
}

function refuseBadShape(columns: readonly ArrayLike<number>[], y: ArrayLike<number>): void {
  if (!(columns.length >= 1 && y.length >= columns.length)) {
    throw new RangeError(`least squares need rows ≥ columns ≥ 1, got ${y.length} rows and ${columns.length} columns`)
  }
  for (const [j, column] of [...columns, y].entries()) {
    const name = j === columns.length ? 'y' : `column ${j}`
    if (column.length !== y.length) throw new RangeError(`${name} has ${column.length} rows, y has ${y.length}`)
    for (let i = 0; i < y.length; i++) {
      if (!Number.isFinite(column[i])) throw new RangeError(`${name} row ${i} must be finite, got ${column[i]}`)
    }
  }
}

/** The power of two nearest below the norm: dividing by it rounds nothing. 1 for a column of zeroes. */
function powerOfTwoNorm(column: ArrayLike<number>): number {
  let largest = 0
  for (let i = 0; i < column.length; i++) largest = Math.max(largest, Math.abs(column[i]))
  if (largest === 0) return 1
  let sum = 0
  for (let i = 0; i < column.length; i++) sum += (column[i] / largest) ** 2
  return 2 ** Math.floor(Math.log2(largest) + Math.log2(sum) / 2)
}

interface Scaled {
  readonly columns: readonly ArrayLike<number>[]
  readonly scale: readonly number[]
  readonly y: ArrayLike<number>
}

/** Solves the augmented system r + A x = y, Aᵀ r = 0, starting from zero, until a round changes nothing that counts. */
function refined(qr: PivotedQr, rank: number, problem: Scaled): { solution: Float64Array; residuals: Float64Array } {
  const rows = problem.y.length
  const solution = new Float64Array(qr.columns)
  const residuals = new Float64Array(rows)
  let last = Number.POSITIVE_INFINITY
  for (let round = 0; round <= refinements; round++) {
    const change = correct(qr, rank, { ...problem, solution, residuals, last })
    if (!(change < last / 2)) break
    last = change
  }
  return { solution, residuals }
}

interface Correction extends Scaled {
  readonly solution: Float64Array
  readonly residuals: Float64Array
  /** Size of the step before; a step that is not smaller is noise and is not taken. */
  readonly last: number
}

/** One step; gives its relative size in the solution. */
function correct(qr: PivotedQr, rank: number, { columns, scale, y, solution, residuals, last }: Correction): number {
  const rows = y.length
  const f = new Float64Array(rows)
  const h = new Float64Array(qr.columns)
  for (let i = 0; i < rows; i++) {
    const sum = new CompensatedDot().add(y[i], 1).add(-residuals[i], 1)
    for (let j = 0; j < columns.length; j++) sum.add(-columns[j][i] / scale[j], solution[j])
    f[i] = sum.value
  }
  for (let place = 0; place < rank; place++) {
    const j = qr.order[place]
    const sum = new CompensatedDot()
    for (let i = 0; i < rows; i++) sum.add(-columns[j][i] / scale[j], residuals[i])
    h[place] = sum.value
  }
  qr.forwardSubstitute(h, rank)
  qr.applyTransposed(f)
  const step = new Float64Array(qr.columns)
  for (let place = 0; place < rank; place++) {
    step[place] = f[place] - h[place]
    f[place] = h[place]
  }
  qr.backSubstitute(step, rank)
  qr.apply(f)
  const moved = solution.slice()
  for (let place = 0; place < rank; place++) moved[qr.order[place]] += step[place]
  const size = Math.hypot(...moved)
  const change = size > 0 ? Math.hypot(...step) / size : 0
  if (!(change < last)) return change
  solution.set(moved)
  for (let i = 0; i < rows; i++) residuals[i] += f[i]
  return change
}
