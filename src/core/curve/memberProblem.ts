import type { CurveMember } from './curveMember.ts'
import type { Observations } from './curvePoint.ts'
import type { ResidualProblem } from './residualProblem.ts'
import { type Spread, takeRoots } from './studentLoss.ts'

/** Sum of Student losses of one member over the observations; see `studentLoss.ts`. */
export function memberProblem(member: CurveMember, observations: Observations, spread: Spread): ResidualProblem {
  const { lnSpeeds, lnFriction } = observations
  const rows = lnSpeeds.length
  const fitted = new Float64Array(rows)
  return {
    rows,
    names: member.names,
    lower: member.lower,
    upper: member.upper,
    evaluate(parameters, residuals, jacobian) {
      member.evaluate(parameters, { lnSpeeds, lnFriction: fitted, jacobian })
      for (let i = 0; i < rows; i++) residuals[i] = fitted[i] - lnFriction[i]
      takeRoots(spread, residuals, jacobian)
    },
  }
}

/** ln μ observed less fitted. */
export function residualsOf(member: CurveMember, observations: Observations, parameters: Float64Array): Float64Array {
  const fitted = new Float64Array(observations.lnSpeeds.length)
  member.evaluate(parameters, { lnSpeeds: observations.lnSpeeds, lnFriction: fitted })
  return observations.lnFriction.map((y, i) => y - fitted[i])
}
