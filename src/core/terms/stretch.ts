import type { Second } from './si.ts'

/**
 * What became of a stretch of a record. `accepted`: behind a point that the curve may use. `notFitted`: behind a
 * point that it may not. `warmUp`: cut at the head of a step. `outOfContact`: the force fell away. `blank`: no contact was meant.
 */
export const stretchKinds = ['accepted', 'notFitted', 'warmUp', 'outOfContact', 'blank'] as const

/** One of these. */
export type StretchKind = (typeof stretchKinds)[number]

/** A stretch of a record with its place in time, as drawn over the raw channels. */
export interface RecordStretch {
  readonly kind: StretchKind
  /** Number of the step that it lies in. */
  readonly step: number
  readonly from: Second
  readonly to: Second
}
