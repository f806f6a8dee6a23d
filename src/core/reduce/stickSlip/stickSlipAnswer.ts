import type { Interval, NewtonMetrePerRadian, Ratio, Remark } from '../../terms/index.ts'
import type { CriticalSpeedBracket } from './criticalSpeed.ts'
import type { StepVibration } from './stepVibration.ts'

/** Stick–slip and other vibration of a record. */
export interface RecordStickSlip {
  readonly steps: readonly StepVibration[]
  readonly criticalSpeed: CriticalSpeedBracket | null
  /** √(κ/J)/2π of the setup, Hz; null where stiffness or inertia is not given. */
  readonly naturalFrequency: number | null
  /** Of the setup. */
  readonly stiffnessGiven: NewtonMetrePerRadian | null
  /** d ln f/d ln v over the sticking steps: 1 where a spring is loaded by the drive, 0 where the frequency is fixed. */
  readonly frequencyExponent: Interval | null
  /** Share of critical damping that would end stick–slip within the bracket, by (ΔF/√(km))/√(e^(4πζ) − 1); null where it cannot be had. */
  readonly damping: { readonly low: Ratio; readonly high: Ratio } | null
  readonly sentences: readonly string[]
  readonly remarks: readonly Remark[]
}
