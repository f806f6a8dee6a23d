import type { NoiseCorrelation } from './noiseCorrelation.ts'
import type { RippleBelief, StepFriction } from './stepFriction.ts'
import type { StepProducts } from './stepProducts.ts'
import type { StepRows } from './stepRows.ts'

/** One step of a record with its estimate, and what the estimate was made from. */
export interface StepResult {
  readonly rows: StepRows
  /** First kept row, in rows of `rows`. */
  readonly from: number
  /** Speed that the friction belongs to, rad/s. */
  readonly speed: number
  readonly settled: boolean
  readonly products: StepProducts | undefined
  readonly estimate: StepFriction | undefined
  /** What was believed of the ripple; undefined entries were left to the step's own data. */
  readonly beliefs: readonly (RippleBelief | undefined)[]
  readonly tiltAssumed: boolean
  /** Place among the steps that could be used; −1 for the others. */
  readonly place: number
  readonly noise: NoiseCorrelation | undefined
  /** n·var(mean)/σ² of the noise, in rows of `rows`. */
  readonly correlationTime: number
}
