import type { Bounded } from './bounded.ts'
import type { Remark } from './remark.ts'
import type { MetrePerSecond, Ratio, Second } from './si.ts'

/** Up and down at one speed. Differences are up less down; intervals are 95 %. */
export interface LoopPair {
  readonly slidingSpeed: MetrePerSecond
  readonly up: number
  readonly down: number
  readonly frictionUp: Ratio
  readonly frictionDown: Ratio
  /** Own part of each point, taken together. */
  readonly difference: Bounded
  /** The same, held over all pairs at once. */
  readonly together: { readonly low: number; readonly high: number }
  /** Part that up and down have in common and that does not cancel: scales on the difference, drift of the zero between. */
  readonly shared: Ratio
  /** Probability of such a difference if there were none, adjusted for the number of pairs (Holm 1979). */
  readonly p: number
}

/** Causes of a difference between up and down. */
export const loopCauses = [
  'runningIn',
  'heating',
  'thixotropy',
  'filmBuildUp',
  'starvation',
  'wear',
  'forceDrift',
  'partialTurns',
  'speedLag',
] as const

/** Name of one of them. */
export type LoopCause = (typeof loopCauses)[number]

/** One cause with what the record says of it. */
export interface LoopCauseFound {
  readonly cause: LoopCause
  readonly verdict: 'likely' | 'possible' | 'unlikely' | 'cannotTell'
  /** Share of the loop that its pattern along the speeds explains, 0 to 1; null where it has none that could be formed. */
  readonly explains: Ratio | null
  readonly for: readonly string[]
  readonly against: readonly string[]
  /** The test that would tell. */
  readonly test: string
}

/** The loop between the rising and the falling speeds of one record. */
export interface Loop {
  readonly pairs: readonly LoopPair[]
  /** ∫(µ_up − µ_down) d ln v, and its mean over the range: the loop's height. */
  readonly area: Bounded
  readonly height: Bounded
  readonly heightShared: Ratio
  /** Height as a share of mean friction. */
  readonly share: Bounded
  readonly margin: Ratio
  /**
   * `real`: it exceeds its own uncertainty. `none`: the whole loop lies inside the margin and is not told from nothing.
   * `small`: told from nothing, yet inside the margin. `cannotTell`: too uncertain for either.
   */
  readonly verdict: 'real' | 'small' | 'none' | 'cannotTell'
  readonly sentence: string
  /** Time between the two visits of the slowest speed. */
  readonly between: Second
  readonly causes: readonly LoopCauseFound[]
  readonly remarks: readonly Remark[]
}
