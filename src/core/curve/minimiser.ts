import { DampedStep } from './dampedStep.ts'
import type { ResidualProblem } from './residualProblem.ts'

/** When to stop. */
export interface StopRules {
  /** Largest cosine between the residuals and a column of the Jacobian that counts as flat. */
  readonly gradient: number
  /** Relative fall of the sum of squares, seen and predicted, that no longer counts. */
  readonly fall: number
  /** Relative step, in scaled parameters, that no longer counts. */
  readonly step: number
  readonly iterations: number
  /** Damping of the first step; small near a solution. */
  readonly damping: number
  /** Whether to go on, without damping, until the slope has no digits left either. */
  readonly polish: boolean
}

/** How a run ended; the parameters themselves are changed in place. */
export interface RunEnd {
  readonly why: 'flat' | 'noFall' | 'noStep' | 'limit' | 'outside'
  readonly sumOfSquares: number
  /** Cosine at the end, over the parameters that were free. */
  readonly gradientNorm: number
  /** Relative length of the undamped step that is left; NaN without polish. */
  readonly reach: number
  readonly iterations: number
}

/**
 * Levenberg–Marquardt with box bounds, in memory of its own for many runs. Variables are scaled by the largest column norm
 * seen (Moré 1978); damping follows the gain ratio (Nielsen 1999, IMM-REP-1999-05); a parameter at its bound whose gradient
 * points outwards is held, and a step is cut back into the box before its gain is judged.
 */
export class Minimiser {
  /** Residuals and Jacobian at the last accepted parameters. */
  residuals: Float64Array
  jacobian: Float64Array
  private trialResiduals: Float64Array
  private trialJacobian: Float64Array
  private readonly trial: Float64Array
  private readonly scale: Float64Array
  private readonly free: Int32Array
  private readonly move: Float64Array
  private readonly step: DampedStep

  constructor(mostRows: number, mostColumns: number) {
    this.residuals = new Float64Array(mostRows)
    this.jacobian = new Float64Array(mostRows * mostColumns)
    this.trialResiduals = new Float64Array(mostRows)
    this.trialJacobian = new Float64Array(mostRows * mostColumns)
    this.trial = new Float64Array(mostColumns)
    this.scale = new Float64Array(mostColumns)
    this.free = new Int32Array(mostColumns)
    this.move = new Float64Array(mostColumns)
    this.step = new DampedStep(mostRows, mostColumns)
  }

  /** Makes the sum of squares small from `parameters`, which must lie inside the bounds, and leaves the best there. */
  run(problem: ResidualProblem, parameters: Float64Array, rules: StopRules): RunEnd {
    this.scale.fill(0)
    problem.evaluate(parameters, this.residuals, this.jacobian)
    const state: State = { problem, parameters, square: sumOfSquares(this.residuals, problem.rows), slope: 0, count: 0 }
    if (!Number.isFinite(state.square)) {
      return { why: 'outside', sumOfSquares: state.square, gradientNorm: Number.NaN, reach: Number.NaN, iterations: 0 }
    }
    this.lookAround(state)
    const { why, iterations } = this.descend(state, rules)
    const reach = rules.polish && why !== 'limit' ? this.polish(state) : Number.NaN
    return { why, sumOfSquares: state.square, gradientNorm: state.slope, reach, iterations }
  }

  private descend(state: State, rules: StopRules): { why: RunEnd['why']; iterations: number } {
    let damping = rules.damping
    let growth = 2
    for (let iterations = 0; ; iterations++) {
      if (state.count === 0 || state.slope <= rules.gradient) return { why: 'flat', iterations }
      if (iterations >= rules.iterations) return { why: 'limit', iterations }
      const length = this.tryStep(state, damping)
      const predicted = state.square - this.predictedSquare(state)
      const fall = state.square - sumOfSquares(this.trialResiduals, state.problem.rows)
      const noFall = predicted >= 0 && Math.max(predicted, Math.abs(fall)) <= rules.fall * state.square
      const gain = predicted > 0 ? fall / predicted : -1
      if (fall > 0 && gain > 1e-4) {
        this.accept(state)
        damping *= Math.max(0.1, 1 - (2 * gain - 1) ** 3)
        growth = 2
      } else {
        damping = Math.max(damping * growth, 1e-12)
        growth *= 2
      }
      if (noFall) return { why: 'noFall', iterations: iterations + 1 }
      if (length <= rules.step || damping > 1e20) return { why: 'noStep', iterations: iterations + 1 }
    }
  }

  /** Where the sum of squares has no digits left, undamped steps go on while the slope falls; gives `reach`. */
  private polish(state: State): number {
    let reach = 0
    for (let round = 0; round < 20 && state.count > 0; round++) {
      const { square, slope } = state
      reach = this.tryStep(state, 0)
      if (!(sumOfSquares(this.trialResiduals, state.problem.rows) <= square * (1 + 1e-12))) break
      this.accept(state)
      if (state.slope < slope / 2) continue
      if (!(state.slope < slope)) this.takeBack(state, square, slope)
      break
    }
    return reach
  }

  /** Sets the trial point one damped step from here; gives the relative length of the step. */
  private tryStep(state: State, damping: number): number {
    this.step.solve(damping, this.move)
    const length = this.cutToBox(state)
    state.problem.evaluate(this.trial, this.trialResiduals, this.trialJacobian)
    return length
  }

  private accept(state: State): void {
    this.exchange(state.parameters)
    state.square = sumOfSquares(this.residuals, state.problem.rows)
    this.lookAround(state)
  }

  private takeBack(state: State, square: number, slope: number): void {
    this.exchange(state.parameters)
    state.square = square
    state.slope = slope
  }

  /** Changes places with the trial point. */
  private exchange(parameters: Float64Array): void {
    for (let j = 0; j < parameters.length; j++) {
      const held = parameters[j]
      parameters[j] = this.trial[j]
      this.trial[j] = held
    }
    const residuals = this.residuals
    const jacobian = this.jacobian
    this.residuals = this.trialResiduals
    this.jacobian = this.trialJacobian
    this.trialResiduals = residuals
    this.trialJacobian = jacobian
  }

  /** Gradient, scale, cosine and the parameters that may move; factors the Jacobian over them. */
  private lookAround(state: State): void {
    const { rows, lower, upper } = state.problem
    const { free, scale, jacobian, residuals } = this
    let count = 0
    let worst = 0
    for (let j = 0; j < state.parameters.length; j++) {
      let square = 0
      let slope = 0
      for (let i = j * rows; i < (j + 1) * rows; i++) {
        square += jacobian[i] * jacobian[i]
        slope += jacobian[i] * residuals[i - j * rows]
      }
      const norm = Math.sqrt(square)
      scale[j] = Math.max(scale[j], norm) || 1
      const at = state.parameters[j]
      const held = (at <= lower[j] && slope > 0) || (at >= upper[j] && slope < 0) || lower[j] === upper[j]
      if (held) continue
      free[count++] = j
      if (norm > 0) worst = Math.max(worst, Math.abs(slope) / norm)
    }
    state.count = count
    state.slope = state.square > 0 ? worst / Math.sqrt(state.square) : 0
    if (count > 0) this.step.prepare({ jacobian, residuals, rows, free, count, scale })
  }

  /** Sets the trial parameters inside the box and `move` to the step that is left; gives its relative length. */
  private cutToBox({ problem, parameters, count }: State): number {
    const { lower, upper } = problem
    let length = 0
    let size = 0
    this.trial.set(parameters)
    for (let k = 0; k < count; k++) {
      const j = this.free[k]
      const to = Math.min(upper[j], Math.max(lower[j], parameters[j] + this.move[k] / this.scale[j]))
      this.trial[j] = to
      this.move[k] = to - parameters[j]
      length += (this.move[k] * this.scale[j]) ** 2
      size += (parameters[j] * this.scale[j]) ** 2
    }
    return Math.sqrt(length / (size || 1))
  }

  private predictedSquare({ problem, count }: State): number {
    let square = 0
    for (let i = 0; i < problem.rows; i++) {
      let r = this.residuals[i]
      for (let k = 0; k < count; k++) r += this.jacobian[this.free[k] * problem.rows + i] * this.move[k]
      square += r * r
    }
    return square
  }
}

/** Where a run stands. */
interface State {
  readonly problem: ResidualProblem
  readonly parameters: Float64Array
  square: number
  /** Largest cosine between the residuals and the Jacobian column of a free parameter. */
  slope: number
  /** Number of free parameters. */
  count: number
}

function sumOfSquares(values: Float64Array, count: number): number {
  let sum = 0
  for (let i = 0; i < count; i++) sum += values[i] * values[i]
  return sum
}
