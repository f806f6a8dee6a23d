import type { PascalSecond, Ratio } from '../../terms/index.ts'

/** One measured point of a flow curve. */
export interface FlowPoint {
  /** 1/s */
  readonly shearRate: number
  readonly viscosity: PascalSecond
  /** Relative standard uncertainty; for all points or for none. Without it every point weighs the same. */
  readonly relativeUncertainty?: Ratio
}
