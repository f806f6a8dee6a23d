import type { SharedSource } from './measured.ts'
import type { MetrePerSecond, Ratio } from './si.ts'

/** How samples are compared: by the ratio of their frictions, or by the difference. */
export type ComparisonScale = 'ratio' | 'difference'

/** A replicate that a person has taken out, and why. Nothing else takes one out. */
export interface Removal {
  readonly record: string
  readonly by: string
  readonly why: string
}

/** What makes a replicate stand out from its sample. It stays in until a person takes it out. */
export interface ReplicateFlag {
  readonly test: 'grubbs' | 'grubbsPair' | 'mandelH'
  readonly seen: number
  /** At 5 %, for Mandel's h at 0.5 %. */
  readonly limit: number
  /** Beyond the limit at 1 % as well; below it a straggler only (ISO 5725-2). */
  readonly outlier: boolean
  /** Where it stands out most, for a test at single speeds. */
  readonly slidingSpeed: MetrePerSecond | null
  readonly sentence: string
}

/** One replicate on the grid of speeds that all have in common. */
export interface ReplicateCurve {
  readonly record: string
  readonly name: string
  readonly removed: Removal | null
  readonly friction: readonly number[]
  /** Own standard uncertainty of friction at each speed. */
  readonly own: readonly number[]
  /** Deviation from the mean of its sample over their standard deviation (Mandel's h); empty where it cannot be had. */
  readonly h: readonly number[]
  readonly flags: readonly ReplicateFlag[]
}

/** Standard deviation between true replicates, as a share of friction, with its 95 % interval. */
export interface Repeatability {
  /** At each speed. */
  readonly profile: readonly Ratio[]
  /** Root mean square over the speeds, evenly spread in ln v. */
  readonly pooled: Ratio
  readonly low: Ratio
  readonly high: Ratio
  readonly degreesOfFreedom: number
  /** 2.8 times the pooled one: two results of one lab that differ by less are not different (ISO 5725-6). */
  readonly limit: Ratio
}

/** The replicates of one sample together. */
export interface SampleCurve {
  readonly sample: string
  /** Those that were taken out included. */
  readonly replicates: readonly ReplicateCurve[]
  /** How many count. */
  readonly used: number
  readonly mean: readonly number[]
  /** 95 % band for the mean, at all speeds at once, from the scatter between replicates; null with one replicate. */
  readonly low: readonly number[] | null
  readonly high: readonly number[] | null
  /** Standard uncertainty of the mean from the own parts alone: how much of the scatter the rig itself explains. */
  readonly own: readonly number[]
  /** Standard uncertainty that all replicates share. */
  readonly shared: readonly number[]
  readonly repeatability: Repeatability | null
}

/** A stretch of speeds with one answer. Effects are relative to the first sample, or in friction (`scale` difference). */
export interface DifferenceStretch {
  readonly from: MetrePerSecond
  readonly to: MetrePerSecond
  /** Where the second sample lies against the first; `open`: the data cannot tell. */
  readonly verdict: 'lower' | 'higher' | 'open'
  /** The whole band lies inside the margin here: practically the same. */
  readonly within: boolean
  /** The whole band lies beyond the margin here: the difference matters. */
  readonly beyond: boolean
  /** Smallest and largest estimate on the stretch. */
  readonly least: number
  readonly most: number
  /** Ends of the band on the stretch. */
  readonly low: number
  readonly high: number
}

/** The difference at one speed that was named before, by itself. */
export interface NamedEffect {
  readonly slidingSpeed: MetrePerSecond
  readonly value: number
  /** 95 % interval for this speed alone. */
  readonly low: number
  readonly high: number
  readonly t: number
  readonly degreesOfFreedom: number
  readonly p: number
  /** Holm's, over all named speeds and pairs. */
  readonly adjusted: number
}

/** The second sample against the first, over the whole range of speeds. */
export interface SampleDifference {
  readonly first: string
  readonly second: string
  /** Ratio − 1, or difference of friction, at each speed. */
  readonly value: readonly number[]
  /** 95 % band that holds at all speeds (and for all pairs) at once. */
  readonly low: readonly number[]
  readonly high: readonly number[]
  /** 95 % interval at each speed alone; narrower, and only for a speed that was chosen beforehand. */
  readonly lowAlone: readonly number[]
  readonly highAlone: readonly number[]
  /** Factor on the standard error in the band, and Student's for a single speed. */
  readonly factor: number
  readonly factorAlone: number
  readonly degreesOfFreedom: number
  /** Chance of so large a difference somewhere, where there is none. */
  readonly p: number
  /** Shared sources that cancel, and those that do not and are in the band. */
  readonly cancelled: readonly SharedSource[]
  readonly notCancelled: readonly SharedSource[]
  readonly stretches: readonly DifferenceStretch[]
  /** Two one-sided tests at every speed: the largest of their p, and whether all say that the two are the same within the margin. */
  readonly same: { readonly everywhere: boolean; readonly p: number }
  readonly named: readonly NamedEffect[]
  readonly sentence: string
}

/** Whether the samples scatter alike. */
export interface ScatterCheck {
  readonly cochran: {
    readonly seen: number
    readonly limit: number
    readonly outlier: boolean
    readonly sample: string
  } | null
  /** Scatter of each sample over the pooled one at each speed (Mandel's k), and the value that it exceeds once in 200. */
  readonly k: readonly (readonly number[])[]
  readonly kLimit: number | null
  /** Levene's test on the levels of the curves; null where a sample has under two replicates. */
  readonly p: number | null
  readonly sentence: string | null
}

/** One sample in the ranking. */
export interface RankedSample {
  readonly sample: string
  readonly used: number
  readonly friction: number
  /** 95 % interval of its own. */
  readonly low: number
  readonly high: number
  /** Samples that have a letter in common cannot be told apart. */
  readonly letters: string
}

/** Two samples of the ranking against each other. */
export interface RankedPair {
  readonly first: string
  readonly second: string
  readonly value: number
  /** 95 % for all pairs at once. */
  readonly low: number
  readonly high: number
  readonly degreesOfFreedom: number
  /** Adjusted for all pairs. */
  readonly p: number
}

/** Part of the scatter that comes from one cause, as a standard deviation in the unit of the comparison. */
export interface ScatterPart {
  readonly cause: string
  readonly deviation: number
}

/** Samples in the order of their friction. */
export interface Ranking {
  /** What was ranked, in words. */
  readonly by: string
  readonly samples: readonly RankedSample[]
  readonly pairs: readonly RankedPair[]
  readonly scatter: readonly ScatterPart[]
  readonly method: string
  readonly sentence: string
}

/** Samples held against each other. SI; arrays run over `speeds`. */
export interface Comparison {
  readonly scale: ComparisonScale
  /** Largest difference without meaning: a share of friction, or friction itself. */
  readonly margin: number
  readonly speeds: readonly MetrePerSecond[]
  /** Speeds at which every record may be believed; null where there are none. */
  readonly believable: { readonly low: MetrePerSecond; readonly high: MetrePerSecond } | null
  readonly samples: readonly SampleCurve[]
  /** Over all samples; null where none has two replicates. */
  readonly repeatability: Repeatability | null
  readonly scatter: ScatterCheck | null
  /** Every pair, each sample against those named before it. */
  readonly differences: readonly SampleDifference[]
  readonly ranking: Ranking | null
  /** How the band was made. */
  readonly method: string
  /** The answer, the verdict first. */
  readonly sentences: readonly string[]
}
