import type { CurveModelName, FitEnd, Interval, Ratio } from '../../terms/index.ts'

/** One point of a liquid on the axis that is to make the liquids one. */
export interface MasterPoint {
  /** Hersey number by whichever definition, in its unit. */
  readonly hersey: number
  readonly friction: number
  readonly ownUncertainty: number
  readonly degreesOfFreedom: number
}

/** A liquid with its points. */
export interface MasterLiquid {
  readonly name: string
  readonly points: readonly MasterPoint[]
  /** Mean viscosity over the points, Pa·s, and its relative standard uncertainty. */
  readonly viscosity: number
  readonly viscosityUncertainty: Ratio
}

/** How one liquid lies on the common curve. */
export interface LiquidShift {
  readonly name: string
  readonly points: number
  readonly viscosity: number
  /** By which factor the liquid must be moved along the axis beyond its viscosity, against the first one; 1 where viscosity is all. Own part. */
  readonly beyond: Interval
  /** The same with the uncertainty of both viscosities. */
  readonly beyondWithViscosity: Interval
  /** Whole shift against the first liquid on the axis of speed. */
  readonly whole: Interval
  /** Mean of ln µ about the common curve: how far it lies above (+) or below. */
  readonly level: Interval
}

/** Several liquids on one curve. */
export interface MasterCurveFit {
  readonly model: CurveModelName
  readonly end: FitEnd
  readonly shifts: readonly LiquidShift[]
  /** Root mean square of ln µ about the best curve: with viscosities, with plain speed, with free shifts; and what own uncertainty alone makes. */
  readonly residual: {
    readonly viscosity: number
    readonly speed: number
    readonly free: number
    readonly own: number
  }
  /** Share of the spread on the axis of speed that viscosity takes away. */
  readonly explained: Ratio
  /** Null: viscosities given to the liquids in every other order (or in many of them). */
  readonly permutations: { readonly orders: number; readonly asGood: number; readonly probability: Ratio }
  /** By how much free shifts lower the loss (χ² at known scatter), and the probability of that by chance (F on the points' freedom). */
  readonly better: { readonly fall: number; readonly probability: Ratio }
  readonly collapses: 'yes' | 'no' | 'cannotTell'
  /** The common curve at places on the axis. */
  readonly curve: readonly { readonly hersey: number; readonly friction: number }[]
}
