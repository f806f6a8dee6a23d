import type { LinearResult } from './propagateLinear.ts'
import { type MonteCarloResult, toleranceOf } from './propagateMonteCarlo.ts'

/** How the law of propagation stands against Monte Carlo. */
export interface PropagationComparison {
  /** |difference| of the lower ends, of the upper ends, and what they may be. */
  readonly low: number
  readonly high: number
  readonly tolerance: number
  readonly agree: boolean
  /** The same for the law with its terms of next higher order; null where it has none. */
  readonly second: { readonly low: number; readonly high: number; readonly agree: boolean } | null
  /** Skewed or heavy: the shortest interval lies elsewhere than the symmetric one by more than the tolerance. */
  readonly lopsided: boolean
}

/**
 * Validation of the law of propagation (JCGM 101:2008, 8.1): it holds where both ends of its interval agree with those of Monte
 * Carlo to within δ, half a unit in the last of `digits` digits of the standard uncertainty. What chance moves the ends of Monte
 * Carlo by is allowed on top; the standard asks for trials until that is δ/5 (8.2), which is often millions.
 */
export function comparePropagations(
  linear: LinearResult,
  monteCarlo: MonteCarloResult,
  digits: number,
): PropagationComparison {
  const tolerance = toleranceOf(linear.standardUncertainty, digits)
  const { symmetric, shortest } = monteCarlo
  const allowed = tolerance + monteCarlo.noise
  const against = (low: number, high: number) => {
    const ends = { low: Math.abs(low - symmetric.low), high: Math.abs(high - symmetric.high) }
    return { ...ends, agree: ends.low <= allowed && ends.high <= allowed }
  }
  return {
    ...against(linear.low, linear.high),
    tolerance,
    second: secondEnds(linear, against),
    lopsided:
      Math.abs(shortest.low - symmetric.low) > Math.max(tolerance, 0.1 * monteCarlo.standardUncertainty) ||
      Math.abs(shortest.high - symmetric.high) > Math.max(tolerance, 0.1 * monteCarlo.standardUncertainty),
  }
}

function secondEnds(
  { second, estimate, coverageFactor }: LinearResult,
  against: (low: number, high: number) => { low: number; high: number; agree: boolean },
): PropagationComparison['second'] {
  if (second === null) return null
  const half = coverageFactor * second.standardUncertainty
  return against(estimate - half, estimate + half)
}
