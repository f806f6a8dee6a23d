import type { Bounded } from './bounded.ts'
import type { SharedSource } from './measured.ts'
import type { Remark } from './remark.ts'
import type { Metre, MetrePerSecond, Newton, Ratio, Second } from './si.ts'

/**
 * Laws of friction against sliding distance s. `level` µ; `drift` µ + b·s; `runIn` µ + A·e^(−s/s₀); `twoStage`
 * µ + A·e^(−s/s₀) + B·e^(−s/s₁), a rise and a fall of different length; `failure` a level, a rise, another level.
 */
export const holdLaws = ['level', 'drift', 'runIn', 'twoStage', 'failure'] as const

/** Name of one of them. */
export type HoldLaw = (typeof holdLaws)[number]

/** A quantity of the law with its 95 % interval from the own part alone. */
export interface HoldQuantity extends Bounded {
  readonly name:
    | 'steady'
    | 'excess'
    | 'length'
    | 'slowExcess'
    | 'slowLength'
    | 'slope'
    | 'before'
    | 'after'
    | 'onset'
    | 'width'
  readonly unit: string
}

/** Is it run in? The answer of the equivalence rule over the last third of the distance. */
export interface RunInVerdict {
  readonly verdict: 'runIn' | 'notRunIn' | 'cannotTell'
  /** Change of friction over the last third as a share of its mean there, with its 95 % interval. */
  readonly change: Bounded
  /** Largest change that does not matter, as a share. */
  readonly margin: Ratio
  readonly from: Metre
  readonly to: Metre
  readonly sentence: string
}

/** How long it took until friction passed a threshold for good. */
export interface HoldLife {
  readonly threshold: Ratio
  /** Where it passed, m; null where it never did, and `watched` is then what is known. */
  readonly distance: Bounded | null
  readonly watched: Metre
  readonly sentence: string
}

/** Friction of one speed held: its law over the distance slid. SI. */
export interface Hold {
  readonly steps: readonly number[]
  readonly slidingSpeed: MetrePerSecond
  readonly axialForce: Newton
  readonly from: Metre
  readonly to: Metre
  readonly duration: Second
  readonly turns: number
  /** Blocks of equally many rows that the law was fitted to. */
  readonly blocks: readonly { readonly distance: Metre; readonly time: Second; readonly friction: Ratio }[]
  readonly rowsPerBlock: number
  /** Of the blocks' noise: correlation from one to the next, standard deviation. */
  readonly noiseCorrelation: number
  readonly noiseDeviation: Ratio
  readonly law: HoldLaw
  /** Every law that was tried, its AICc above the best, and its weight. */
  readonly choices: readonly { readonly law: HoldLaw; readonly delta: number; readonly weight: number }[]
  readonly quantities: readonly HoldQuantity[]
  /** The fitted law at the blocks; those from the beginning of a failure on have none. */
  readonly fitted: readonly Ratio[]
  /** Mean friction over the last third of the distance with its own 95 % interval. */
  readonly late: Bounded
  /** Standard uncertainties of that friction which all points of the rig share, by source. */
  readonly shared: Readonly<Partial<Record<SharedSource, number>>>
  /** Distance from which on friction stays within `steadyShare` of its steady value; value 0 where it always did. */
  readonly steadyFrom: Bounded | null
  readonly steadyShare: Ratio
  readonly runIn: RunInVerdict
  /** Mean friction of the first third over that of the last, less 1. */
  readonly early: Bounded
  /** A rise followed by a fall in the first quarter: where its top is, and its height as a share of the higher foot; null where there was none. */
  readonly hump: { readonly at: Metre; readonly height: Bounded } | null
  readonly life: HoldLife | null
  /** Mean change of the gap per metre slid with its 95 % interval; null without a gap channel. */
  readonly gapCreep: Bounded | null
  readonly remarks: readonly Remark[]
}

/** Two sweeps one after the other in the same direction: by how much the second differs, as a share of friction. */
export interface SweepChange {
  readonly from: string
  readonly to: string
  readonly speeds: number
  /** Mean over the speeds with its 95 % interval. */
  readonly mean: Bounded
  /** At the speed at which it is largest in size, with its 95 % interval. */
  readonly largest: Bounded & { readonly slidingSpeed: MetrePerSecond }
  readonly verdict: RunInVerdict['verdict']
  readonly sentence: string
}

/** Would another sweep change the answer? From one sweep to the next, the last change deciding. */
export interface SweepsRunIn {
  readonly changes: readonly SweepChange[]
  readonly margin: Ratio
  readonly verdict: RunInVerdict['verdict']
  readonly sentence: string
}
