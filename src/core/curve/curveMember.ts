import type { CurveModelName } from '../terms/index.ts'

/** What the data reach; bounds and reference points of the members follow from it. Natural logarithms of m/s and of μ. */
export interface Reach {
  readonly lnSlowest: number
  readonly lnFastest: number
  readonly lnLeast: number
  readonly lnMost: number
}

/** Where a member is evaluated and where the answer goes. */
export interface Evaluation {
  readonly lnSpeeds: Float64Array
  /** ln μ at each speed. */
  readonly lnFriction: Float64Array
  /** d ln μ_i / d parameter_j at j·(number of speeds) + i. */
  readonly jacobian?: Float64Array
}

/** A parameter as people read it: `offset` and a weighted sum of the inner ones, or the exponential of that. */
export interface ShownParameter {
  readonly name: string
  readonly unit: string
  readonly weights: Float64Array
  readonly offset: number
  readonly logarithmic: boolean
}

/** Logarithms of the speeds at which the boundary share has fallen to 95 % and to 5 %. */
export interface RegimeSpeeds {
  readonly mixedBegins: number
  readonly filmBegins: number
}

/**
 * One member of the curve family. Its inner parameters are chosen so that bounds are natural and correlations small:
 * logarithms of levels at the ends of the data and of speeds, plain exponents.
 */
export interface CurveMember {
  readonly name: CurveModelName
  readonly names: readonly string[]
  readonly lower: Float64Array
  readonly upper: Float64Array
  /** Places of the inner parameters that are logarithms of levels; friction is linear in their exponentials. */
  readonly levels: readonly number[]
  readonly shown: readonly ShownParameter[]
  /** Starting values of the inner parameters that are not levels, in order; the levels are then solved for. */
  readonly starts: readonly (readonly number[])[]
  evaluate(parameters: Float64Array, at: Evaluation): void
  /** Place of the inner parameter that is ln μ of the boundary branch at the slowest speed; null where there is none. */
  readonly boundary: number | null
  readonly regimes: ((parameters: Float64Array) => RegimeSpeeds) | null
  /** Share of the boundary branch at a speed, given by its logarithm; null where there is but one branch. */
  readonly share: ((parameters: Float64Array, lnSpeed: number) => number) | null
}

/** Everything that a level may be: from a thousandth of the least friction seen to a thousand times the most. */
const levelRoom = Math.log(1000)

/** Bounds of the logarithm of a level. */
export const levelBounds = ({ lnLeast, lnMost }: Reach): readonly [number, number] => [
  lnLeast - levelRoom,
  lnMost + levelRoom,
]

/** Bounds of the logarithm of a transition speed: a decade beyond the data. */
export const speedBounds = ({ lnSlowest, lnFastest }: Reach): readonly [number, number] => [
  lnSlowest - Math.LN10,
  lnFastest + Math.LN10,
]

/** `count` logarithms of speed inside the data, evenly spread, none at an end. */
export const speedsInside = ({ lnSlowest, lnFastest }: Reach, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => lnSlowest + ((i + 0.5) / count) * (lnFastest - lnSlowest))

/** Splits pairs of bounds into two arrays. */
export const boxOf = (
  ...bounds: readonly (readonly [number, number])[]
): { lower: Float64Array; upper: Float64Array } => ({
  lower: Float64Array.from(bounds, ([low]) => low),
  upper: Float64Array.from(bounds, ([, high]) => high),
})

/** A shown parameter that is the exponential of one inner parameter plus `offset`, or that parameter itself. */
export function shownParameter(
  name: string,
  weights: readonly number[],
  { unit = '', offset = 0, logarithmic = true }: Partial<Pick<ShownParameter, 'unit' | 'offset' | 'logarithmic'>> = {},
): ShownParameter {
  return { name, unit, weights: Float64Array.from(weights), offset, logarithmic }
}
