import type { AnyUnit } from '../../core/quantity/index.ts'
import type { Distribution } from '../../core/stats/judging/index.ts'
import type { Place } from '../../core/terms/index.ts'

/** A quantity that goes in, in SI. */
export interface InputQuantity {
  readonly name: string
  readonly unit: AnyUnit
  readonly place: Place
  /** What is known of it; or where a reduced record gives it. */
  readonly known: { readonly as: 'distribution'; readonly distribution: Distribution } | RecordQuantity
}

/** Friction of a reduced record at a sliding speed. */
export interface RecordQuantity {
  readonly as: 'record'
  /** File of the result, as it stands in the model. */
  readonly file: string
  /** m/s. */
  readonly slidingSpeed: number
}

/** A quantity that comes out. */
export interface OutputQuantity {
  readonly name: string
  readonly formula: string
  /** Unit to print it in; the SI unit of the formula where it is left out. */
  readonly unit?: AnyUnit
  readonly place: Place
}

/** Correlation of two inputs by their names. */
export interface NamedCorrelation {
  readonly first: string
  readonly second: string
  readonly coefficient: number
  readonly place: Place
}

/** A measurement model as a person writes it down. */
export interface UncertaintyModel {
  readonly title: string
  readonly note?: string
  readonly inputs: readonly InputQuantity[]
  readonly correlations: readonly NamedCorrelation[]
  readonly outputs: readonly OutputQuantity[]
  /** Of the intervals, such as 0.95. */
  readonly coverage: number
  /** Significant digits of u to which both methods must agree. */
  readonly digits: number
}
