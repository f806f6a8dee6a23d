import type { Ratio, Second } from '../terms/index.ts'

/** A stretch within one step in which only a share of the axial force is left. */
export interface LostContact {
  readonly step: number
  /** Since the step began. */
  readonly from: Second
  readonly to: Second
  readonly share: Ratio
}

/** Share of the axial force that acts `time` after step `step` began. */
export function contactShare(losses: readonly LostContact[], step: number, time: Second): Ratio {
  for (const loss of losses) if (loss.step === step && time >= loss.from && time < loss.to) return loss.share
  return 1
}
