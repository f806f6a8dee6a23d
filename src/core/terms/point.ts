import type { SharedSource } from './measured.ts'
import type { Remark } from './remark.ts'
import type { Kelvin, Metre, MetrePerSecond, Newton, NewtonMetre, Ratio, Second } from './si.ts'

/** Rows of the record that a point was made from; `from` to `to` is the whole step, `kept` what was left after the cut. */
export interface RowRange {
  readonly from: number
  readonly to: number
  readonly kept: number
}

/** Amplitude and phase of one turn harmonic, relative to the mean, with the standard uncertainty of the amplitude. */
export interface TurnHarmonic {
  readonly order: number
  readonly amplitude: Ratio
  readonly phase: number
  readonly uncertainty: Ratio
}

/** One step reduced to one friction value. */
export interface Point {
  readonly step: number
  /** Mean speed over the kept rows. */
  readonly slidingSpeed: MetrePerSecond
  /** null where none can be had; the remarks say why. */
  readonly friction: number | null
  /** 95 % interval from the own part alone. */
  readonly low: number | null
  readonly high: number | null
  /** Standard uncertainties. */
  readonly ownUncertainty: number | null
  readonly sharedUncertainty: number | null
  readonly shared: Readonly<Partial<Record<SharedSource, number>>>
  /** Effective degrees of freedom of `ownUncertainty`. */
  readonly degreesOfFreedom: number | null
  readonly turns: number
  readonly duration: Second
  /** Means over the kept rows after zeroes and blank. */
  readonly torque: NewtonMetre
  readonly axialForce: Newton
  readonly gap: Metre | null
  readonly temperature: Kelvin | null
  /** Integrated autocorrelation time 1 + 2Σρ of the residual, in samples. */
  readonly autocorrelationTime: number | null
  readonly frictionHarmonics: readonly TurnHarmonic[]
  readonly forceHarmonics: readonly TurnHarmonic[]
  /** +1 where speed rises from the step before, −1 where it falls. */
  readonly direction: 1 | -1
  /** False for a point that the curve must not be fitted through (contact lost, at the ceiling, stick-slip …). */
  readonly trusted: boolean
  readonly rows: RowRange
  readonly remarks: readonly Remark[]
}
