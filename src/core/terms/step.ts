import type { RadianPerSecond } from './si.ts'

/** A stretch at one commanded speed, or one speed bin of a ramp. Rows `from` (inclusive) to `to` (exclusive). */
export interface Step {
  readonly number: number
  readonly kind: 'slide' | 'blank'
  readonly from: number
  readonly to: number
  /** Speed that it settles to. */
  readonly target: RadianPerSecond
}
