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

/** A comparison with its records and what was asked. */
export interface Compared {
  readonly title: string
  readonly records: readonly ComparedRecord[]
  /** Records of the study that could not take part, and why. */
  readonly left: readonly { readonly name: string; readonly why: string }[]
  readonly removals: readonly Removal[]
  readonly comparison: Comparison
  readonly program: string
}
