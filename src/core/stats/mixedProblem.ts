/** A cause of scatter: which level of it each value belongs to, from 0. */
export interface RandomCause {
  readonly name: string
  readonly levels: readonly number[]
}

/** Values with what is fixed and what is random about them. */
export interface MixedProblem {
  readonly values: readonly number[]
  /** Design of the fixed part, a row for each value, of full rank. */
  readonly design: readonly (readonly number[])[]
  readonly causes: readonly RandomCause[]
}
