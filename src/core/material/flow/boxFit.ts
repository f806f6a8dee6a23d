import { PivotedQr } from '../../numeric/index.ts'
import type { FitEnd } from '../../terms/index.ts'
import type { Span } from '../span.ts'

/** Residuals to be made small, and where the parameters may lie. */
export interface BoxProblem {
  readonly names: readonly string[]
  readonly box: readonly Span[]
  readonly rows: number
  /** Writes residuals and, column by column, their derivatives at a place inside the box. */
  readonly at: (place: Float64Array, residuals: Float64Array, jacobian: Float64Array) => void
}

/** Where the search ended and why. */
export interface BoxFit {
  readonly place: Float64Array
  readonly sumOfSquares: number
  readonly end: FitEnd
  /** (JᵀJ)⁻¹ row by row over the parameters that are free; zero for those at a bound. */
  readonly inverseGram: Float64Array
  readonly free: readonly number[]
}

const mostSteps = 300
/** Mean square of residuals that is rounding alone, where the data are exact. */
const roundingSquare = 1e-26
/** Cosine between the residual and the nearest column under which nothing is left to gain. */
const flat = 1e-10
/** The same when no step falls any more: rounding hides the rest. */
const nearlyFlat = 1e-5
/** Columns of unit size with less than this left after projection cannot be told apart. */
const rankTolerance = 1e-9

/**
 * Damped Gauss–Newton steps (Levenberg 1944, Marquardt 1963) by QR, clipped to the box; a parameter that presses against
 * its bound is held there. Small and for few parameters: flow curves have one to five.
 */
export function boxFit(problem: BoxProblem, start: readonly number[]): BoxFit {
  const search = new Search(problem, start)
  let damping = 1e-3
  for (let iterations = 0; iterations < mostSteps; iterations++) {
    const free = search.freePlaces()
    const gradientNorm = search.steepest(free)
    if (!(gradientNorm > flat)) return search.finish(free, { why: 'converged', gradientNorm, iterations })
    let tried = search.tryStep(free, damping)
    while (tried === 'rose' && damping < 1e12) {
      damping *= 4
      tried = search.tryStep(free, damping)
    }
    if (tried !== 'fell') {
      const end: FitEnd =
        gradientNorm < nearlyFlat ? { why: 'converged', gradientNorm, iterations } : { why: 'stepLimit', iterations }
      return search.finish(free, end)
    }
    damping = Math.max(damping / 5, 1e-12)
  }
  return search.finish(search.freePlaces(), { why: 'stepLimit', iterations: mostSteps })
}

class Search {
  private readonly problem: BoxProblem
  private place: Float64Array
  private residuals: Float64Array
  private jacobian: Float64Array
  private sum: number
  private readonly trialResiduals: Float64Array
  private readonly trialJacobian: Float64Array

  constructor(problem: BoxProblem, start: readonly number[]) {
    const { rows, box } = problem
    this.problem = problem
    this.place = Float64Array.from(start, (value, j) => clip(value, box[j]))
    this.residuals = new Float64Array(rows)
    this.jacobian = new Float64Array(rows * box.length)
    this.trialResiduals = new Float64Array(rows)
    this.trialJacobian = new Float64Array(rows * box.length)
    problem.at(this.place, this.residuals, this.jacobian)
    this.sum = squares(this.residuals)
  }

  private column(j: number): Float64Array {
    return this.jacobian.subarray(j * this.problem.rows, (j + 1) * this.problem.rows)
  }

  /** Parameters that are not pressed against a bound. */
  freePlaces(): readonly number[] {
    return this.problem.box.flatMap(({ low, high }, j) => {
      const slope = dot(this.column(j), this.residuals)
      return (this.place[j] <= low && slope > 0) || (this.place[j] >= high && slope < 0) ? [] : [j]
    })
  }

  /** Largest cosine between the residual and a free column; zero where all fits. */
  steepest(free: readonly number[]): number {
    if (this.sum <= this.problem.rows * roundingSquare) return 0
    return free.reduce((most, j) => {
      const size = Math.sqrt(squares(this.column(j)) * this.sum)
      return size > 0 ? Math.max(most, Math.abs(dot(this.column(j), this.residuals)) / size) : most
    }, 0)
  }

  tryStep(free: readonly number[], damping: number): 'fell' | 'rose' | 'still' {
    const { box } = this.problem
    const step = this.step(free, damping)
    const trial = this.place.slice()
    for (const [k, j] of free.entries()) trial[j] = clip(trial[j] + step[k], box[j])
    if (trial.every((value, j) => value === this.place[j])) return 'still'
    this.problem.at(trial, this.trialResiduals, this.trialJacobian)
    const sum = squares(this.trialResiduals)
    if (!(sum < this.sum)) return 'rose'
    this.place = trial
    this.sum = sum
    this.residuals.set(this.trialResiduals)
    this.jacobian.set(this.trialJacobian)
    return 'fell'
  }

  /** Solves |J s + r|² + damping·|D s|², D the sizes of the columns. */
  private step(free: readonly number[], damping: number): Float64Array {
    const { rows } = this.problem
    const height = rows + free.length
    const qr = new PivotedQr(height, free.length)
    const sizes = free.map((j) => Math.sqrt(squares(this.column(j))) || 1)
    for (const [k, j] of free.entries()) {
      const column = this.column(j)
      for (let i = 0; i < rows; i++) qr.values[k * height + i] = column[i] / sizes[k]
      qr.values[k * height + rows + k] = Math.sqrt(damping)
    }
    qr.factor(height, free.length)
    const b = new Float64Array(height)
    for (let i = 0; i < rows; i++) b[i] = -this.residuals[i]
    qr.applyTransposed(b)
    qr.backSubstitute(b, free.length)
    const step = new Float64Array(free.length)
    for (let at = 0; at < free.length; at++) step[qr.order[at]] = b[at] / sizes[qr.order[at]]
    return step
  }

  /** Holds what presses against a bound, tells whether the rest can be told apart, and gives (JᵀJ)⁻¹. */
  finish(free: readonly number[], end: FitEnd): BoxFit {
    const { names, box } = this.problem
    const inverseGram = new Float64Array(names.length ** 2)
    const confused = this.gram(free, inverseGram)
    const held = names.findIndex((_, j) => !free.includes(j) && box[j].low < box[j].high)
    return {
      place: this.place,
      sumOfSquares: this.sum,
      end: endOf(end, { confused: confused.map((j) => names[j]), held: names[held], bound: this.place[held] }),
      inverseGram,
      free,
    }
  }

  /** Writes (JᵀJ)⁻¹ over the free parameters; gives those that cannot be told apart. */
  private gram(free: readonly number[], into: Float64Array): readonly number[] {
    const { rows, names } = this.problem
    if (free.length === 0) return []
    const height = Math.max(rows, free.length)
    const qr = new PivotedQr(height, free.length)
    const sizes = free.map((j) => Math.sqrt(squares(this.column(j))) || 1)
    for (const [k, j] of free.entries()) {
      const column = this.column(j)
      for (let i = 0; i < rows; i++) qr.values[k * height + i] = column[i] / sizes[k]
    }
    qr.factor(height, free.length)
    const rank = qr.diagonal[0] === 0 ? 0 : qr.rank(rankTolerance)
    if (rank < free.length) return free.filter((_, k) => Array.from(qr.order).indexOf(k) >= rank)
    const gram = qr.inverseGram(rank)
    for (const [a, first] of free.entries()) {
      for (const [b, second] of free.entries()) {
        into[first * names.length + second] = gram[a * free.length + b] / (sizes[a] * sizes[b])
      }
    }
    return []
  }
}

interface Standing {
  readonly confused: readonly string[]
  readonly held: string | undefined
  readonly bound: number
}

function endOf(end: FitEnd, { confused, held, bound }: Standing): FitEnd {
  const { iterations } = end
  if (end.why !== 'converged') return end
  if (confused.length > 0) return { why: 'singular', parameters: confused, iterations }
  return held === undefined ? end : { why: 'atBound', parameter: held, bound, iterations }
}

const clip = (value: number, { low, high }: Span): number => Math.min(high, Math.max(low, value))

function dot(first: Float64Array, second: Float64Array): number {
  let sum = 0
  for (let i = 0; i < first.length; i++) sum += first[i] * second[i]
  return sum
}

const squares = (values: Float64Array): number => dot(values, values)
