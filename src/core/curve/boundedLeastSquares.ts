import { PivotedQr } from '../numeric/index.ts'
import type { Correlation, FitEnd } from '../terms/index.ts'
import { Minimiser, type RunEnd, type StopRules } from './minimiser.ts'
import type { ResidualProblem } from './residualProblem.ts'

/** A nonlinear fit that says why it stopped. Arrays are in the order of the problem's names. */
export interface BoundedFit {
  readonly end: FitEnd
  readonly parameters: Float64Array
  readonly residuals: Float64Array
  readonly sumOfSquares: number
  /** Rows less free parameters. */
  readonly degreesOfFreedom: number
  /** (JᵀJ)⁻¹ row by row, from R, over the parameters that are free and told apart; zero for the others. */
  readonly inverseGram: Float64Array
  /** Parameters at a bound that they press against. */
  readonly held: readonly string[]
}

/** Rules for a fit whose digits count. */
export const exactRules: StopRules = {
  gradient: 1e-15,
  fall: 4e-16,
  step: 1e-15,
  iterations: 2000,
  damping: 100,
  polish: true,
}

/** Scaled columns with less than this left after projection cannot be told apart from the others. */
const rankTolerance = 1e-12

/** A run that stalled on a steeper slope than this, with a longer step left than that, did not converge. */
const stalledSlope = 1e-4
const stalledReach = 1e-8

/** Fits from `start`, moved into the bounds where it lies outside. Throws RangeError for a start that is not a number. */
export function boundedLeastSquares(
  problem: ResidualProblem,
  start: ArrayLike<number>,
  rules: Partial<StopRules> = {},
): BoundedFit {
  const { rows, names, lower, upper } = problem
  const parameters = Float64Array.from(names, (name, j) => {
    if (!Number.isFinite(start[j])) throw new RangeError(`start of ${name} must be a number, got ${start[j]}`)
    if (!(lower[j] <= upper[j])) throw new RangeError(`bounds of ${name} cross: ${lower[j]} and ${upper[j]}`)
    return Math.min(upper[j], Math.max(lower[j], start[j]))
  })
  const minimiser = new Minimiser(rows, names.length)
  const run = minimiser.run(problem, parameters, { ...exactRules, ...rules })
  const residuals = minimiser.residuals.slice()
  const shape = shapeAt(problem, parameters, minimiser)
  return {
    end: endOf(run, shape, { problem, parameters }),
    parameters,
    residuals,
    sumOfSquares: run.sumOfSquares,
    degreesOfFreedom: rows - shape.free.length,
    inverseGram: shape.inverseGram,
    held: shape.held.map((j) => names[j]),
  }
}

/** Correlations above `threshold` in size, from a covariance row by row. */
export function strongCorrelations(
  covariance: Float64Array,
  names: readonly string[],
  threshold: number,
): readonly Correlation[] {
  const size = names.length
  const found: Correlation[] = []
  for (let a = 0; a < size; a++) {
    for (let b = a + 1; b < size; b++) {
      const value = covariance[a * size + b] / Math.sqrt(covariance[a * size + a] * covariance[b * size + b])
      if (Math.abs(value) > threshold) found.push({ first: names[a], second: names[b], value })
    }
  }
  return found
}

interface Shape {
  readonly free: readonly number[]
  readonly held: readonly number[]
  readonly inverseGram: Float64Array
  /** Parameters that cannot be told apart, empty where all can. */
  readonly confused: readonly number[]
}

/** Factors the Jacobian at the end over the free parameters. */
function shapeAt({ rows, names, lower, upper }: ResidualProblem, parameters: Float64Array, at: Minimiser): Shape {
  const column = (j: number): Float64Array => at.jacobian.subarray(j * rows, (j + 1) * rows)
  const slope = (j: number): number => column(j).reduce((sum, entry, i) => sum + entry * at.residuals[i], 0)
  const pressed = (j: number): boolean =>
    lower[j] === upper[j] || (parameters[j] <= lower[j] && slope(j) > 0) || (parameters[j] >= upper[j] && slope(j) < 0)
  const all = names.map((_, j) => j)
  const free = all.filter((j) => !pressed(j))
  const held = all.filter(pressed)
  const inverseGram = new Float64Array(names.length ** 2)
  if (free.length === 0) return { free, held, inverseGram, confused: [] }
  const height = Math.max(rows, free.length)
  const qr = new PivotedQr(height, free.length)
  const sizes = free.map((j) => Math.hypot(...column(j)) || 1)
  for (const [k, j] of free.entries()) {
    for (let i = 0; i < rows; i++) qr.values[k * height + i] = column(j)[i] / sizes[k]
  }
  qr.factor(height, free.length)
  const rank = qr.diagonal[0] === 0 ? 0 : qr.rank(rankTolerance)
  const gram = rank === 0 ? new Float64Array(free.length ** 2) : qr.inverseGram(rank)
  for (const [a, ja] of free.entries()) {
    for (const [b, jb] of free.entries()) {
      inverseGram[ja * names.length + jb] = gram[a * free.length + b] / (sizes[a] * sizes[b])
    }
  }
  return { free, held, inverseGram, confused: confusedAmong(qr, rank).map((k) => free[k]) }
}

/** Columns after the rank, and those before it of which they are made up by more than a tenth. */
function confusedAmong(qr: PivotedQr, rank: number): number[] {
  const found = new Set<number>()
  for (let place = rank; place < qr.columns; place++) {
    found.add(qr.order[place])
    const made = new Float64Array(rank)
    for (let i = 0; i < rank; i++) made[i] = qr.values[place * qr.rows + i]
    qr.backSubstitute(made, rank)
    for (let i = 0; i < rank; i++) if (Math.abs(made[i]) > 0.1) found.add(qr.order[i])
  }
  return [...found].sort((a, b) => a - b)
}

interface Place {
  readonly problem: ResidualProblem
  readonly parameters: Float64Array
}

function endOf(run: RunEnd, shape: Shape, { problem, parameters }: Place): FitEnd {
  const { names, lower, upper } = problem
  const { iterations, gradientNorm } = run
  const stalled = run.why === 'noStep' && gradientNorm > stalledSlope && !(run.reach < stalledReach)
  if (run.why === 'limit' || run.why === 'outside') return { why: 'stepLimit', iterations }
  if (shape.confused.length > 0) return { why: 'singular', parameters: shape.confused.map((j) => names[j]), iterations }
  if (stalled) return { why: 'stepLimit', iterations }
  const pressed = shape.held.find((j) => lower[j] < upper[j])
  if (pressed === undefined) return { why: 'converged', gradientNorm, iterations }
  return { why: 'atBound', parameter: names[pressed], bound: parameters[pressed], iterations }
}
