import type { Comparison, Removal } from '../../core/terms/index.ts'
import type { ReportFigure } from '../reportContent.ts'

/** All that the report of a decision is made from; it computes nothing. */
export interface DecisionInput {
  readonly title: string
  readonly question?: string
  readonly author?: string
  /** Day of the report, 2026-11-25. */
  readonly date?: string
  readonly comparison: Comparison
  readonly records: readonly DecisionRecord[]
  readonly left: readonly { readonly name: string; readonly why: string }[]
  readonly removals: readonly Removal[]
  /** What makes samples hard to compare. */
  readonly cautions: readonly string[]
  readonly figures: readonly ReportFigure[]
  readonly program: string
}

/** One record that went in. */
export interface DecisionRecord {
  readonly name: string
  readonly sample: string
  readonly replicate: number | null
  /** Checksums of the raw bytes and of the setup. */
  readonly raw: string
  readonly setup: string
}
