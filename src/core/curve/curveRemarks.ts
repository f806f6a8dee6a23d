import { chiSquaredQuantile } from '../stats/index.ts'
import { modelWords, type Remark } from '../terms/index.ts'
import type { MemberFit } from './fitMember.ts'
import { innerName, innerValue } from './innerNames.ts'
import { squaresByOwn } from './weighedFits.ts'

/** Chance at which scatter that own uncertainties explain is taken for more. */
const significance = 0.01

/** Points that the whole family needs: one more than its richest member has parameters. */
export const pointsForAll = 7
/** Points without which nothing is fitted. */
export const leastPoints = 3

/** Findings on a fitted curve. */
export const curveRemarks = (fit: MemberFit): readonly Remark[] => [
  ...fewPoints(fit.residuals.length),
  ...stoppedEarly(fit),
  ...atBounds(fit),
  ...scatterBeyondOwn(fit),
]

/** Says where points are too few for all members, or for any. */
export function fewPoints(points: number): readonly Remark[] {
  if (points >= pointsForAll) return []
  const left =
    points < leastPoints ? 'no curve can be fitted' : `only members with fewer than ${points} parameters were fitted`
  return [
    {
      kind: 'notEnoughPoints',
      seen: points,
      limit: points < leastPoints ? leastPoints : pointsForAll,
      unit: '',
      sentence: `${points} ${points === 1 ? 'point' : 'points'} can be used: ${left}.`,
      next: 'Measure at more speeds, or look at the remarks on the points that were left out.',
    },
  ]
}

function stoppedEarly({ end, member }: MemberFit): readonly Remark[] {
  if (end.why === 'converged' || end.why === 'atBound') return []
  const singular = end.why === 'singular'
  const how = singular
    ? `cannot tell ${end.parameters.map(innerName).join(' from ')}`
    : `did not settle within ${end.iterations} iterations`
  return [
    {
      kind: 'fitStopped',
      seen: singular ? end.parameters.length : end.iterations,
      limit: singular ? 1 : end.iterations,
      unit: '',
      sentence: `The fit of ${member.name} ${how}.`,
      next: 'Do not use its parameters; measure at more speeds where the curve bends.',
    },
  ]
}

function atBounds({ member, parameters, held }: MemberFit): readonly Remark[] {
  return held.map((name) => {
    const value = innerValue(name, parameters[member.names.indexOf(name)])
    const words = innerName(name)
    return {
      kind: 'parameterAtBound',
      seen: value,
      limit: value,
      unit: words === 'x0' ? 'm/s' : '',
      sentence: `${words} of “${modelWords[member.name]}” lies at its bound: the data do not hold it.`,
      next: 'Take it as not known; steps further out or closer together would hold it.',
    }
  })
}

/**
 * Holds the weighted squares against χ² with n − p degrees of freedom, narrowed for points with few own degrees of freedom
 * (κ = mean of ν/(ν+3), see `weighedFits.ts`).
 */
function scatterBeyondOwn(fit: MemberFit): readonly Remark[] {
  const { freedom, observations, residuals, scatter } = fit
  const narrowing = observations.freedom.reduce((sum, nu) => sum + nu / (nu + 3), 0) / residuals.length
  const limit = narrowing * chiSquaredQuantile(1 - significance, freedom / narrowing)
  const seen = squaresByOwn(fit)
  if (!(seen > limit)) return []
  return [
    {
      kind: 'scatterBeyondOwn',
      seen,
      limit,
      unit: '',
      sentence:
        `Steps scatter by ${(100 * scatter).toPrecision(2)} % of friction beyond their own uncertainty ` +
        `(weighted squares ${seen.toPrecision(3)}, ${freedom} expected): it is part of all intervals.`,
      next: 'Look for what changes from step to step: running-in, wear, temperature, a tilted plate, or a curve of another form.',
    },
  ]
}
