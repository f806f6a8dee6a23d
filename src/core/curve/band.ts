import { percentileOfSorted, type Random } from '../numeric/index.ts'
import type { BandPoint } from '../terms/index.ts'
import type { Reach } from './curveMember.ts'
import type { MemberFit } from './fitMember.ts'
import { Minimiser, type StopRules } from './minimiser.ts'
import type { ResidualProblem } from './residualProblem.ts'
import { effectiveUncertainty } from './studentLoss.ts'
import type { WeighedFit } from './weighedFits.ts'

const rules: StopRules = { gradient: 1e-3, fall: 1e-5, step: 1e-5, iterations: 25, damping: 1e-6, polish: false }

/** What a band is made of. */
export interface BandRequest {
  /** The fit that the band is drawn about. */
  readonly fit: MemberFit
  /** Members at scatters that draws are taken from, by weight. */
  readonly fits: readonly WeighedFit[]
  readonly reach: Reach
  readonly draws: number
  readonly speeds: number
  readonly random: Random
}

/** Says in words what `band` does. */
export const bandMethod = (draws: number): string =>
  `Bootstrap over the steps, ${draws} draws: each draw takes a member of the family and a scatter between steps by their ` +
  'weights, draws every step anew about the fit from its own uncertainty (wider for few degrees of freedom and for a large ' +
  'residual) and that scatter, and fits again. Percentiles 2.5 and 97.5 at each speed: nominal coverage 95 % at any one ' +
  'speed, less for the whole curve at once. Own uncertainty only; what all points share moves the band as a whole.'

/**
 * Pointwise 95 % band by a parametric bootstrap over the steps, as `bandMethod` says, at `speeds` speeds spread evenly in
 * ln v. The draw of a step is normal; its standard uncertainty is the one that gives the parameters the spread that their
 * likelihood has (`effectiveUncertainty`).
 */
export function band({ fit, fits, reach, draws, speeds, random }: BandRequest): readonly BandPoint[] {
  const width = speeds === 1 ? 0 : (reach.lnFastest - reach.lnSlowest) / (speeds - 1)
  const lnSpeeds = Float64Array.from({ length: speeds }, (_, i) => reach.lnSlowest + i * width)
  const drawn = new Float64Array(speeds * draws)
  const total = fits.reduce((sum, { weight }) => sum + weight, 0)
  let from = 0
  let share = 0
  for (const { fit: drawnFrom, weight } of fits) {
    share += weight / total
    const to = Math.round(share * draws)
    drawCurves({ fit: drawnFrom, random, lnSpeeds, drawn, draws }, from, to)
    from = to
  }
  const lnFriction = new Float64Array(speeds)
  fit.member.evaluate(fit.parameters, { lnSpeeds, lnFriction })
  return Array.from(lnSpeeds, (lnSpeed, k) => {
    const here = drawn.subarray(k * draws, (k + 1) * draws).sort()
    return {
      slidingSpeed: Math.exp(lnSpeed),
      friction: Math.exp(lnFriction[k]),
      low: Math.exp(Math.min(lnFriction[k], percentileOfSorted(here, 0.025, 7))),
      high: Math.exp(Math.max(lnFriction[k], percentileOfSorted(here, 0.975, 7))),
    }
  })
}

interface Drawing {
  readonly fit: MemberFit
  readonly random: Random
  readonly lnSpeeds: Float64Array
  /** ln μ by speed and then by draw. */
  readonly drawn: Float64Array
  readonly draws: number
}

/** Fills in draws `from` to `to` from one fit. */
function drawCurves({ fit, random, lnSpeeds, drawn, draws }: Drawing, from: number, to: number): void {
  const { member, observations, parameters, residuals, spread } = fit
  const points = residuals.length
  const uncertainty = effectiveUncertainty(spread, residuals)
  const centre = observations.lnFriction.map((y, i) => y - residuals[i])
  const target = new Float64Array(points)
  const problem = plainProblem(fit, uncertainty, target)
  const minimiser = new Minimiser(points, member.names.length)
  const lnFriction = new Float64Array(lnSpeeds.length)
  const moved = parameters.slice()
  for (let draw = from; draw < to; draw++) {
    for (let i = 0; i < points; i++) target[i] = centre[i] + uncertainty[i] * random.normal()
    moved.set(parameters)
    minimiser.run(problem, moved, rules)
    member.evaluate(moved, { lnSpeeds, lnFriction })
    for (let k = 0; k < lnSpeeds.length; k++) drawn[k * draws + draw] = lnFriction[k]
  }
}

/** Plain weighted least squares of one member about targets that change from draw to draw. */
function plainProblem(
  { member, observations }: MemberFit,
  uncertainty: Float64Array,
  target: Float64Array,
): ResidualProblem {
  const { lnSpeeds } = observations
  const rows = lnSpeeds.length
  return {
    rows,
    names: member.names,
    lower: member.lower,
    upper: member.upper,
    evaluate(parameters, residuals, jacobian) {
      member.evaluate(parameters, { lnSpeeds, lnFriction: residuals, jacobian })
      for (let i = 0; i < rows; i++) residuals[i] = (residuals[i] - target[i]) / uncertainty[i]
      if (jacobian === undefined) return
      for (let j = 0; j < member.names.length; j++) {
        for (let i = 0; i < rows; i++) jacobian[j * rows + i] /= uncertainty[i]
      }
    },
  }
}
