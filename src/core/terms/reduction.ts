import type { Point } from './point.ts'
import type { Remark } from './remark.ts'
import type { Newton, NewtonMetre, Ratio, Second } from './si.ts'
import type { Step } from './step.ts'
import type { BelievableWindow } from './window.ts'

/** Zero of the axial force: level + slope·(t − at). Level and slope are uncorrelated at `at`. */
export interface ZeroLine {
  readonly from: 'blank' | 'blankBeforeAndAfter' | 'none'
  readonly level: Newton
  /** N/s */
  readonly slope: number
  readonly at: Second
  readonly levelUncertainty: Newton
  readonly slopeUncertainty: number
  readonly rows: number
}

/** Torque without contact: level + perSpeed·Ω + what repeats every turn. */
export interface TorqueBlank {
  readonly from: 'blank' | 'none'
  readonly level: NewtonMetre
  /** N·m·s */
  readonly perSpeed: number
  /** Variance of the level, their covariance, variance of `perSpeed`. */
  readonly covariance: readonly [number, number, number]
  readonly turn: readonly { readonly order: number; readonly cosine: NewtonMetre; readonly sine: NewtonMetre }[]
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

/** One record reduced: its steps, what was corrected and by how much, the points, and how far they may be believed. */
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
