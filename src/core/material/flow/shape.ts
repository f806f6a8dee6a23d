import type { PascalSecond } from '../../terms/index.ts'
import type { Span } from '../span.ts'

/** Names of the flow laws, simplest first. */
export const flowLawNames = ['newtonian', 'powerLaw', 'herschelBulkley', 'cross', 'carreauYasuda'] as const

/** One of these. */
export type FlowLawName = (typeof flowLawNames)[number]

/** A parameter of a flow law. */
export interface FlowParameter {
  readonly name: string
  /** SI; "" for plain numbers. */
  readonly unit: string
  /** Smallest value with a meaning. */
  readonly least: number
  /** Whether a fit moves its logarithm (positive, of unknown size) or the number itself (may be zero). */
  readonly moves: 'logarithm' | 'itself'
}

/** What a flow curve says about where to look for parameters. */
export interface CurveExtent {
  readonly shearRate: Span
  readonly viscosity: Span
  /** Of viscosity times rate, Pa. */
  readonly shearStress: Span
  /** Viscosity at the slowest and at the fastest rate, Pa·s. */
  readonly atSlowest: PascalSecond
  readonly atFastest: PascalSecond
  /** d ln η/d ln γ̇ over the whole curve. */
  readonly slope: number
}

/** Viscosity as a function of shear rate. Arrays are in the order of `parameters`. */
export interface FlowLaw {
  readonly parameters: readonly FlowParameter[]
  readonly source: string
  /** Pa·s at a rate in 1/s. */
  viscosity(values: ArrayLike<number>, shearRate: number): PascalSecond
  /** Writes ∂η/∂parameter; the rate is more than zero. */
  slopes(values: ArrayLike<number>, shearRate: number, into: Float64Array): void
  /** Bounds of a fit. */
  bounds(extent: CurveExtent): readonly Span[]
  /** Places from which a fit starts. */
  starts(extent: CurveExtent): readonly (readonly number[])[]
}
