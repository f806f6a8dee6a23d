import type { Bounded } from './bounded.ts'
import type { Remark } from './remark.ts'
import type { Kelvin, MetrePerSecond, Newton, Ratio } from './si.ts'

/** What differs from record to record of a series. */
export const seriesAxes = ['load', 'temperature'] as const

/** Name of one of them. */
export type SeriesAxis = (typeof seriesAxes)[number]

/** One point of one record of a series. */
export interface SeriesPoint {
  readonly slidingSpeed: MetrePerSecond
  readonly friction: Ratio
  readonly ownUncertainty: Ratio
}

/** One record of a series: one load, one temperature. */
export interface SeriesMember {
  readonly name: string
  readonly axialForce: Newton
  /** Normal load on one contact. */
  readonly load: Newton
  readonly temperature: Kelvin | null
  /** Of the liquid at that temperature, Pa·s. */
  readonly viscosity: number | null
  readonly points: readonly SeriesPoint[]
  /** Standard uncertainty of the axial force that all records share: its zero. */
  readonly forceZero: Newton
}

/** The law at one speed, or over all. `load`: µ ∝ F^(−a), `value` is a. `temperature`: ln µ = const + E/(R·T), value is E in J/mol. */
export interface SeriesLaw extends Bounded {
  readonly slidingSpeed: MetrePerSecond | null
  readonly records: number
  /** Standard uncertainty that all records share. */
  readonly shared: number
}

/** Records at several loads or temperatures, taken together. */
export interface Series {
  readonly axis: SeriesAxis
  readonly members: readonly SeriesMember[]
  readonly atSpeeds: readonly SeriesLaw[]
  /** One value for all speeds; null where there are too few records. */
  readonly overall: SeriesLaw | null
  /** Whether the law changes with speed: probability of so large differences between speeds if it did not. */
  readonly sameAtAllSpeeds: number | null
  /** Friction force against load, by speed: slope and intercept (N). Load series only. */
  readonly intercepts: readonly {
    readonly slidingSpeed: MetrePerSecond
    readonly slope: Bounded
    readonly intercept: Bounded
  }[]
  /** Scatter between records beyond their own uncertainty, as a share. */
  readonly scatter: Ratio
  readonly sentences: readonly string[]
  readonly remarks: readonly Remark[]
}
