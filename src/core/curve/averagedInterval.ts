import { monotoneInterpolant } from '../numeric/index.ts'
import { normalCdf } from '../stats/index.ts'
import type { SignedRoot } from './profile.ts'

/** The profile of one fit and its weight. */
export interface WeightedProfile {
  readonly profile: SignedRoot
  readonly weight: number
}

/**
 * Ends are null where the data do not bound the quantity inside its reach. Where it lies outside for certain, the end of the
 * reach bounds it.
 */
export interface Interval {
  readonly low: number | null
  readonly high: number | null
}

/**
 * 95 % interval of a quantity over several fits: its ends are where the weighted tail areas of their profile likelihoods,
 * Σ w Φ(root), come to 2.5 % each (Turek & Fletcher 2012, Comput. Stat. Data Anal. 56:2809; Fletcher & Turek 2012, J. Agric.
 * Biol. Environ. Stat. 17:38). With one fit it is the plain profile-likelihood interval. Weights count by their sum.
 */
export function averagedInterval(fits: readonly WeightedProfile[], reach: { low: number; high: number }): Interval {
  const total = fits.reduce((sum, { weight }) => sum + weight, 0)
  const parts = fits.map(({ profile, weight }) => ({ root: rootAlong(profile), share: weight / total }))
  const below = (g: number): number => parts.reduce((sum, { root, share }) => sum + share * normalCdf(root(g)), 0)
  return {
    low: below(reach.low) > tail ? null : crossing(below, tail, reach),
    high: below(reach.high) < 1 - tail ? null : crossing(below, 1 - tail, reach),
  }
}

const tail = 0.025

/** Where a rising function takes a value, or the end of the reach nearest to that. */
function crossing(below: (g: number) => number, value: number, reach: { low: number; high: number }): number {
  let { low, high } = reach
  for (let round = 0; round < 60 && high - low > 1e-9 * (reach.high - reach.low); round++) {
    const middle = (low + high) / 2
    if (below(middle) < value) low = middle
    else high = middle
  }
  return below(low) >= value ? low : high
}

/** The root at any g: smooth between knots, straight on outside them, flat where the quantity is stuck. */
export function rootAlong({ at, root, stuckLow, stuckHigh }: SignedRoot): (g: number) => number {
  const last = at.length - 1
  if (last === 0) return () => root[0]
  const inside = monotoneInterpolant(at, root)
  const slope = (k: number): number => (root[k + 1] - root[k]) / (at[k + 1] - at[k])
  const [slopeLow, slopeHigh] = [stuckLow ? 0 : slope(0), stuckHigh ? 0 : slope(last - 1)]
  return (g) => {
    if (g < at[0]) return root[0] + (g - at[0]) * slopeLow
    return g > at[last] ? root[last] + (g - at[last]) * slopeHigh : inside(g)
  }
}
