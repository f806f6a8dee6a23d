import type { Kelvin, Metre, Second } from '../terms/index.ts'

/**
 * A temperature that drifts from its set value and nears a new one, and the shaft that grows with it and closes the gap.
 * Growth of shaft and fixture is usually 1 to 2 µm/K (common practice, no source).
 */
export interface ThermalDrift {
  /** Where the temperature goes, less where it was. */
  readonly change: Kelvin
  readonly timeConstant: Second
  /** m/K */
  readonly growth: number
}

/** Temperature less its set value. */
export const warming = (drift: ThermalDrift, time: Second): Kelvin =>
  -drift.change * Math.expm1(-time / drift.timeConstant)

/** By how much the gap reading falls. */
export const thermalGap = (drift: ThermalDrift, time: Second): Metre => -drift.growth * warming(drift, time)
