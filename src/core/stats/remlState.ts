import { invertSymmetric } from '../numeric/index.ts'
import type { MixedProblem } from './mixedProblem.ts'

/** The restricted likelihood at given variances, with its first and expected second derivatives. */
export interface RemlState {
  /** Of the causes, then of the residual. */
  readonly variances: readonly number[]
  readonly residual: number
  readonly criterion: number
  readonly coefficients: Float64Array
  /** Of the coefficients. */
  readonly covariance: Float64Array
  /** Derivatives of that covariance by each variance. */
  readonly slopes: readonly Float64Array[]
  /** Derivatives of the log-likelihood by each variance. */
  readonly score: Float64Array
  readonly information: Float64Array
  /** yᵀPy. */
  readonly squares: number
}

/** Works with dense matrices: meant for some hundred values. */
export function remlState({ values, design, causes }: MixedProblem, variances: readonly number[]): RemlState {
  const n = values.length
  const p = design[0].length
  const levels = [...causes.map((cause) => cause.levels), values.map((_, i) => i)]
  const total = new Float64Array(n * n)
  for (const [k, level] of levels.entries()) {
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) if (level[i] === level[j]) total[i * n + j] += variances[k]
  }
  const whole = invertSymmetric(total, n)
  if (whole === undefined) throw new RangeError(`variances must leave a residual, got ${variances}`)
  const weighted = product(whole.inverse, design, n)
  const gram = new Float64Array(p * p)
  for (let a = 0; a < p; a++) {
    for (let b = 0; b < p; b++) for (let i = 0; i < n; i++) gram[a * p + b] += design[i][a] * weighted[i * p + b]
  }
  const fixed = invertSymmetric(gram, p)
  if (fixed === undefined) throw new RangeError('columns of the design must differ from each other')
  const covariance = fixed.inverse
  const pulled = timesRight(weighted, covariance, n)
  const projection = whole.inverse.slice()
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++)
      for (let a = 0; a < p; a++) projection[i * n + j] -= pulled[i * p + a] * weighted[j * p + a]
  }
  const seen = Float64Array.from({ length: n }, (_, i) => dotRow(projection, i, values))
  const squares = values.reduce((sum, value, i) => sum + value * seen[i], 0)
  const coefficients = new Float64Array(p)
  for (let i = 0; i < n; i++) for (let a = 0; a < p; a++) coefficients[a] += pulled[i * p + a] * values[i]
  return {
    variances,
    residual: causes.length,
    criterion: whole.logDeterminant + fixed.logDeterminant + squares + (n - p) * Math.log(2 * Math.PI),
    ...{ coefficients, covariance, squares },
    slopes: levels.map((level) => slopeOf(pulled, level, p)),
    ...derivatives(levels, projection, seen),
  }
}

/** Score ½(yᵀP Vₖ P y − tr P Vₖ) and information ½ tr(P Vₖ P Vₗ), where Vₖ is one where two values share a level. */
function derivatives(
  levels: readonly (readonly number[])[],
  projection: Float64Array,
  seen: Float64Array,
): Pick<RemlState, 'score' | 'information'> {
  const size = levels.length
  const score = new Float64Array(size)
  const information = new Float64Array(size * size)
  for (let k = 0; k < size; k++) {
    const sums = new Map<number, number>()
    for (const [i, level] of levels[k].entries()) sums.set(level, (sums.get(level) ?? 0) + seen[i])
    score[k] = [...sums.values()].reduce((sum, value) => sum + value * value, 0)
    score[k] = (score[k] - trace(projection, levels[k])) / 2
    for (let l = 0; l <= k; l++) {
      information[k * size + l] = information[l * size + k] = blockSquares(projection, levels[k], levels[l]) / 2
    }
  }
  return { score, information }
}

function trace(projection: Float64Array, level: readonly number[]): number {
  const n = level.length
  let sum = 0
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) if (level[i] === level[j]) sum += projection[i * n + j]
  return sum
}

/** Sum of squares of the sums of P over each pair of levels. */
function blockSquares(projection: Float64Array, rows: readonly number[], columns: readonly number[]): number {
  const n = rows.length
  const [height, width] = [Math.max(...rows) + 1, Math.max(...columns) + 1]
  const blocks = new Float64Array(height * width)
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) blocks[rows[i] * width + columns[j]] += projection[i * n + j]
  return blocks.reduce((sum, value) => sum + value * value, 0)
}

/** C Xᵀ V⁻¹ Vₖ V⁻¹ X C: sums of the pulled rows over each level, squared. */
function slopeOf(pulled: Float64Array, level: readonly number[], p: number): Float64Array {
  const sums = new Map<number, Float64Array>()
  for (const [i, one] of level.entries()) {
    const sum = sums.get(one) ?? new Float64Array(p)
    for (let a = 0; a < p; a++) sum[a] += pulled[i * p + a]
    sums.set(one, sum)
  }
  const slope = new Float64Array(p * p)
  for (const sum of sums.values()) {
    for (let a = 0; a < p; a++) for (let b = 0; b < p; b++) slope[a * p + b] += sum[a] * sum[b]
  }
  return slope
}

function product(matrix: Float64Array, design: MixedProblem['design'], n: number): Float64Array {
  const p = design[0].length
  const out = new Float64Array(n * p)
  for (let i = 0; i < n; i++) {
    for (let a = 0; a < p; a++) for (let j = 0; j < n; j++) out[i * p + a] += matrix[i * n + j] * design[j][a]
  }
  return out
}

function timesRight(left: Float64Array, square: Float64Array, n: number): Float64Array {
  const p = left.length / n
  const out = new Float64Array(n * p)
  for (let i = 0; i < n; i++) {
    for (let a = 0; a < p; a++) for (let b = 0; b < p; b++) out[i * p + a] += left[i * p + b] * square[b * p + a]
  }
  return out
}

function dotRow(matrix: Float64Array, row: number, values: readonly number[]): number {
  let sum = 0
  for (let j = 0; j < values.length; j++) sum += matrix[row * values.length + j] * values[j]
  return sum
}
