import type { Remark } from './remark.ts'
import type { MetrePerSecond } from './si.ts'

/** Why a fit stopped. No estimate may be shown without it. */
export type FitEnd =
  | { readonly why: 'converged'; readonly gradientNorm: number; readonly iterations: number }
  | { readonly why: 'stepLimit'; readonly iterations: number }
  | { readonly why: 'atBound'; readonly parameter: string; readonly bound: number; readonly iterations: number }
  | { readonly why: 'singular'; readonly parameters: readonly string[]; readonly iterations: number }

/** Members of the curve family, simplest first. */
export const curveModelNames = ['plateau', 'powerLaw', 'stribeck', 'stribeckSloped', 'stribeckExponential'] as const

/** Name of one member. */
export type CurveModelName = (typeof curveModelNames)[number]

/** An estimate with its 95 % interval; an end is null where the data do not bound it. */
export interface Estimate {
  readonly name: string
  readonly value: number
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
}

/** A feature of the curve; `why` says what it is, or, where `value` is null, why the data have none. */
export interface Feature {
  readonly name: 'boundaryLevel' | 'minimumSpeed' | 'minimumFriction' | 'filmSlope' | 'mixedBegins' | 'filmBegins'
  readonly value: number | null
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
  readonly why?: string
}

/** The fitted curve at one speed with its 95 % band. */
export interface BandPoint {
  readonly slidingSpeed: MetrePerSecond
  readonly friction: number
  readonly low: number
  readonly high: number
}

/** How a member fared against the others; weights are Akaike's and sum to 1 over all that were fitted. */
export interface ModelChoice {
  readonly model: CurveModelName
  /** AICc difference to the best, averaged over the scatter between steps: −2 ln of the ratio of their weights. */
  readonly delta: number
  readonly weight: number
  readonly parameters: number
}

/** Correlation of two fitted parameters, −1 to 1. */
export interface Correlation {
  readonly first: string
  readonly second: string
  readonly value: number
}

/** The points of one record with their fit. */
export interface Curve {
  /** null where no fit was possible; `remarks` say why. */
  readonly model: CurveModelName | null
  readonly parameters: readonly Estimate[]
  readonly features: readonly Feature[]
  readonly band: readonly BandPoint[]
  readonly bandMethod: string
  readonly end: FitEnd | null
  readonly choices: readonly ModelChoice[]
  /** Correlations of parameters above 0.9 in size. */
  readonly correlations: readonly Correlation[]
  /** Weighted sum of squares and its degrees of freedom. */
  readonly chiSquared: number | null
  readonly degreesOfFreedom: number
  /** Extra scatter between steps beyond own uncertainty, as a share of friction. */
  readonly extraScatter: number
  readonly points: number
  readonly remarks: readonly Remark[]
}
