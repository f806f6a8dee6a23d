import type { FitEnd } from '../terms/index.ts'
import { boundedLeastSquares } from './boundedLeastSquares.ts'
import type { CurveMember } from './curveMember.ts'
import type { Observations } from './curvePoint.ts'
import { extraScatter } from './extraScatter.ts'
import { memberProblem, residualsOf } from './memberProblem.ts'
import { Minimiser, type StopRules } from './minimiser.ts'
import { startsOf } from './startsOf.ts'
import { deviance, type Spread, spreadOf } from './studentLoss.ts'

/** One member of the family at its best for a given scatter between steps. */
export interface MemberFit {
  readonly member: CurveMember
  readonly observations: Observations
  /** Standard deviation between steps beyond own uncertainty, as a share of friction. */
  readonly scatter: number
  readonly spread: Spread
  readonly parameters: Float64Array
  /** ln μ observed less fitted. */
  readonly residuals: Float64Array
  /** Sum of losses; its rise is what intervals are made of. */
  readonly loss: number
  /** Points less parameters. */
  readonly freedom: number
  /** Covariance of the inner parameters; zero for those held at a bound. */
  readonly covariance: Float64Array
  readonly held: readonly string[]
  readonly end: FitEnd
}

const rough: StopRules = { gradient: 1e-4, fall: 1e-6, step: 1e-6, iterations: 60, damping: 1e-2, polish: false }
const warm: StopRules = { gradient: 1e-6, fall: 1e-10, step: 1e-9, iterations: 60, damping: 1e-4, polish: false }
const last: StopRules = { gradient: 1e-9, fall: 1e-14, step: 1e-12, iterations: 400, damping: 1e-4, polish: true }

/** Scatter of the first look, so wide that no precise point can trap the search. */
const wideScatter = 0.03
/** Starts that are followed after the first look, and of those after the second. */
const followed = 5
const finalists = 3
const scatterRounds = 25

/**
 * Fits from the most promising of the member's starts, with the scatter between steps that brings the weighted squares down
 * to points less parameters. Needs more points than parameters.
 */
export function fitMember(member: CurveMember, observations: Observations): MemberFit {
  const points = observations.lnSpeeds.length
  if (!(points > member.names.length)) {
    throw new RangeError(`${member.name} needs more than ${member.names.length} points, got ${points}`)
  }
  const minimiser = new Minimiser(points, member.names.length)
  const wide = memberProblem(member, observations, spreadOf(observations, wideScatter))
  const lossAt = (parameters: Float64Array): number => {
    wide.evaluate(parameters, minimiser.residuals)
    return minimiser.residuals.reduce((sum, e) => sum + e * e, 0)
  }
  return startsOf(member, observations)
    .map((parameters) => ({ parameters, loss: lossAt(parameters) }))
    .sort((a, b) => a.loss - b.loss)
    .slice(0, followed)
    .map(({ parameters }) => ({ loss: minimiser.run(wide, parameters, rough).sumOfSquares, parameters }))
    .sort((a, b) => a.loss - b.loss)
    .filter(({ loss }, i, all) => i === 0 || loss > all[i - 1].loss * (1 + 1e-3))
    .slice(0, finalists)
    .map(({ parameters }) => settle({ member, observations, minimiser }, parameters))
    .reduce((best, fit) => (deviance(fit.spread, fit.residuals) < deviance(best.spread, best.residuals) ? fit : best))
}

/** The same member fitted again with another scatter between steps. */
export const withScatter = ({ member, observations, parameters }: MemberFit, scatter: number): MemberFit =>
  finish({ member, observations, scatter }, parameters)

interface Search {
  readonly member: CurveMember
  readonly observations: Observations
  readonly minimiser: Minimiser
}

/** Fit and scatter in turn, until the scatter stays. */
function settle({ member, observations, minimiser }: Search, start: Float64Array): MemberFit {
  const freedom = observations.lnSpeeds.length - member.names.length
  const parameters = start.slice()
  let scatter = wideScatter
  for (let round = 0; round < scatterRounds; round++) {
    const before = scatter
    scatter = extraScatter(observations, residualsOf(member, observations, parameters), freedom)
    minimiser.run(memberProblem(member, observations, spreadOf(observations, scatter)), parameters, warm)
    if (Math.abs(scatter - before) <= 1e-3 * before) break
  }
  return finish({ member, observations, scatter }, parameters)
}

function finish(job: Pick<MemberFit, 'member' | 'observations' | 'scatter'>, start: Float64Array): MemberFit {
  const { member, observations, scatter } = job
  const spread = spreadOf(observations, scatter)
  const fit = boundedLeastSquares(memberProblem(member, observations, spread), start, last)
  return {
    ...job,
    spread,
    parameters: fit.parameters,
    residuals: residualsOf(member, observations, fit.parameters),
    loss: fit.sumOfSquares,
    freedom: observations.lnSpeeds.length - member.names.length,
    covariance: fit.inverseGram,
    held: fit.held,
    end: fit.end,
  }
}
