import type { Correlation, Estimate } from '../terms/index.ts'
import { averagedInterval } from './averagedInterval.ts'
import { strongCorrelations } from './boundedLeastSquares.ts'
import type { Reach } from './curveMember.ts'
import { linearQuantity } from './curveQuantity.ts'
import { followedRoot } from './featureProfile.ts'
import type { MemberFit } from './fitMember.ts'
import { profile } from './profile.ts'
import type { WeighedFit } from './weighedFits.ts'

/** Correlations from this size on are listed. */
const strong = 0.9

/** Exponents are followed over this range; the members' own bounds end them sooner. */
const exponentReach = { low: -10, high: 10 }

/** Parameters of a member as people read them, with profile-likelihood intervals averaged over the scatters. */
export function shownEstimates(fit: MemberFit, scatters: readonly WeighedFit[], reach: Reach): readonly Estimate[] {
  return fit.member.shown.map(({ name, unit, weights, offset, logarithmic }) => {
    const quantity = linearQuantity(weights, offset)
    const best = quantity.value(fit.parameters)
    const along = logarithmic ? logarithmReach(best, reach) : exponentReach
    const { low, high } = averagedInterval(
      scatters.map((at) => ({
        weight: at.weight,
        profile: profile(at.fit, quantity, { ...along, root: followedRoot }),
      })),
      along,
    )
    const show = logarithmic ? Math.exp : (g: number): number => g
    const value = show(best)
    return {
      name,
      value,
      low: low === null ? null : Math.min(value, show(low)),
      high: high === null ? null : Math.max(value, show(high)),
      unit,
    }
  })
}

/**
 * Logarithms are followed up to a factor of a thousand and of the width of the data to the third power, for levels at 1 m/s
 * that lie far outside the data.
 */
function logarithmReach(best: number, { lnSlowest, lnFastest }: Reach): { low: number; high: number } {
  const room = Math.log(1000) + 3 * Math.max(lnFastest - lnSlowest, Math.abs(lnSlowest), Math.abs(lnFastest))
  return { low: best - room, high: best + room }
}

/** Strong correlations among the parameters as people read them. */
export function shownCorrelations({ member, covariance }: MemberFit): readonly Correlation[] {
  const { shown, names } = member
  const size = shown.length
  const out = new Float64Array(size * size)
  for (const [a, { weights: left }] of shown.entries()) {
    for (const [b, { weights: right }] of shown.entries()) {
      for (let i = 0; i < names.length; i++) {
        for (let j = 0; j < names.length; j++) {
          out[a * size + b] += left[i] * covariance[i * names.length + j] * right[j]
        }
      }
    }
  }
  return strongCorrelations(
    out,
    shown.map(({ name }) => name),
    strong,
  )
}
