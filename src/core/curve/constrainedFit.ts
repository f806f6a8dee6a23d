import type { CurveQuantity } from './curveQuantity.ts'
import type { MemberFit } from './fitMember.ts'
import { memberProblem } from './memberProblem.ts'
import { Minimiser, type StopRules } from './minimiser.ts'
import type { ResidualProblem } from './residualProblem.ts'

/** A quantity held at a target by one more row, `stiffness` times their difference. */
export interface Hold {
  readonly quantity: CurveQuantity
  readonly target: number
  readonly stiffness: number
}

const rules: StopRules = { gradient: 1e-5, fall: 1e-9, step: 1e-8, iterations: 60, damping: 1e-5, polish: false }

const nothing: Hold = { quantity: { value: () => 0, gradient: (_, out) => void out.fill(0) }, target: 0, stiffness: 0 }

/**
 * Re-fits a member with a quantity held near a target. Whatever value g the quantity comes to, the loss there is the least
 * of all with that g: so each solution is a point of the profile, and the row need not be stiff.
 */
export class ConstrainedFit {
  private readonly fit: MemberFit
  private readonly minimiser: Minimiser
  private readonly problem: ResidualProblem
  private hold = nothing

  constructor(fit: MemberFit) {
    const columns = fit.member.names.length
    const base = memberProblem(fit.member, fit.observations, fit.spread)
    this.fit = fit
    this.minimiser = new Minimiser(base.rows + 1, columns)
    this.problem = this.withRow(base, columns)
  }

  /** Makes the loss small with the quantity held, from `parameters` and in place; gives the loss without the row. */
  solve(parameters: Float64Array, hold: Hold): number {
    this.hold = hold
    const { sumOfSquares } = this.minimiser.run(this.problem, parameters, rules)
    return sumOfSquares - this.minimiser.residuals[this.problem.rows - 1] ** 2
  }

  /** Standard uncertainty of a quantity by first order; 0 where no free parameter moves it. */
  uncertainty(quantity: CurveQuantity): number {
    const { parameters, covariance } = this.fit
    const size = parameters.length
    const gradient = new Float64Array(size)
    quantity.gradient(parameters, gradient)
    let variance = 0
    for (let a = 0; a < size; a++) {
      for (let b = 0; b < size; b++) variance += gradient[a] * gradient[b] * covariance[a * size + b]
    }
    return Number.isFinite(variance) ? Math.sqrt(Math.max(0, variance)) : 0
  }

  private withRow(base: ResidualProblem, columns: number): ResidualProblem {
    const { rows } = base
    const inner = new Float64Array(rows)
    const innerJacobian = new Float64Array(rows * columns)
    const gradient = new Float64Array(columns)
    return {
      ...base,
      rows: rows + 1,
      evaluate: (parameters, residuals, jacobian) => {
        const { quantity, target, stiffness } = this.hold
        base.evaluate(parameters, inner, jacobian && innerJacobian)
        residuals.set(inner)
        residuals[rows] = stiffness * (quantity.value(parameters) - target)
        if (jacobian === undefined) return
        quantity.gradient(parameters, gradient)
        for (let j = 0; j < columns; j++) {
          jacobian.set(innerJacobian.subarray(j * rows, (j + 1) * rows), j * (rows + 1))
          jacobian[j * (rows + 1) + rows] = stiffness * gradient[j]
        }
      },
    }
  }
}
