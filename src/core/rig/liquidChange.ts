import type { Ratio, Second } from '../terms/index.ts'

/** A viscosity that changes while the record runs: structure that breaks down, water that evaporates. */
export interface LiquidChange {
  /** Change in the end as a share, −0.3 for a third less; over −1. */
  readonly share: Ratio
  readonly timeConstant: Second
}

/** Viscosity over its first value. Friction follows speed times viscosity, so this is a factor on the speed of the law. */
export const viscosityFactor = ({ share, timeConstant }: LiquidChange, time: Second): Ratio =>
  1 - share * Math.expm1(-time / timeConstant)
