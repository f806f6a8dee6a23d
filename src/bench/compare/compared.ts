import type { Comparison, Removal } from '../../core/terms/index.ts'

/** A record that went into a comparison, with what it takes to make it again. */
export interface ComparedRecord {
  /** File or id by which it is named in removals. */
  readonly record: string
  readonly name: string
  readonly sample: string
  readonly replicate: number | null
  readonly raw: string
  readonly setup: string
}

/** Why two samples are hard to compare though their curves can be. */
export interface Caution {
  readonly samples: readonly [string, string]
  readonly sentence: string
}

/** A comparison with its records and what was asked. */
export interface Compared {
  readonly title: string
  readonly records: readonly ComparedRecord[]
  /** Records and samples of the study that do not take part, and why. */
  readonly left: readonly { readonly name: string; readonly why: string }[]
  readonly removals: readonly Removal[]
  /** What makes samples hard to compare: other loads, bodies, liquids, temperatures. */
  readonly cautions: readonly Caution[]
  /** Alarms of the watch over the rig that nobody has answered. */
  readonly alarms: readonly string[]
  readonly comparison: Comparison
  readonly program: string
}
