import type { Curve, ReduceOptions, Reduction, Setup } from '../../core/terms/index.ts'
import type { ReportGeometry, ReportRecord } from '../reportInput.ts'

/** What was really done. */
export interface Done {
  readonly setup: Setup
  readonly options: ReduceOptions
  readonly reduction: Reduction
  readonly curve: Curve | null
  readonly geometry: ReportGeometry
  readonly record: ReportRecord
}
