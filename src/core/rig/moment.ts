import type { Radian, RadianPerSecond, Second } from '../terms/index.ts'
import type { SheetStep } from './sheetSteps.ts'

/** Where the motor stands when a sample is taken. */
export interface Moment {
  readonly step: SheetStep
  /** Since the record began, and since the step began. */
  readonly time: Second
  readonly inStep: Second
  readonly speed: RadianPerSecond
  /** rad/s² */
  readonly acceleration: number
  /** Of the motor since the record began. */
  readonly angle: Radian
  /** Since the last sample. */
  readonly turned: Radian
  readonly interval: Second
}
