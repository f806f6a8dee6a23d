import type { Point } from './point.ts'
import type { Remark } from './remark.ts'
import type { Newton, NewtonMetre, Ratio, Second } from './si.ts'
import type { Step } from './step.ts'
import type { BelievableWindow } from './window.ts'

/** A zero line a + b·(t − t0), with the standard uncertainty of its value at the time of the sliding. */
export interface ZeroLine {
  readonly from: 'blank' | 'blankBeforeAndAfter' | 'none'
  readonly level: Newton
  readonly slope: number
  readonly at: Second
  readonly uncertainty: Newton
  readonly rows: number
}

/** Torque without contact: level + perSpeed·Ω. */
export interface TorqueBlank {
  readonly from: 'blank' | 'none'
  readonly level: NewtonMetre
  /** N·m·s */
  readonly perSpeed: number
  readonly covariance: readonly [number, number, number]
  readonly rows: number
}

/** What the turns have in common all over the record, relative to the mean. */
export interface RecordRipple {
  readonly order: number
  readonly torque: Ratio
  readonly force: Ratio
  readonly friction: Ratio
  readonly uncertainty: Ratio
}

export interface Reduction {
  readonly steps: readonly Step[]
  readonly points: readonly Point[]
  readonly segmentation: 'stepColumn' | 'plateaus' | 'ramp' | 'whole'
  readonly forceZero: ZeroLine
  readonly torqueBlank: TorqueBlank
  readonly ripple: readonly RecordRipple[]
  /** Lag-one autocorrelation of the noise, pooled over the steps. */
  readonly noiseCorrelation: number
  readonly sampleInterval: Second
  readonly window: BelievableWindow
  readonly remarks: readonly Remark[]
}
