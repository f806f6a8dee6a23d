/** Where in the input something is wrong. Line and column count from 1; `cell` is the text as it stands there. */
export interface Place {
  readonly file?: string
  readonly line?: number
  readonly column?: number
  /** Heading of the column or path of the setup key. */
  readonly name?: string
  readonly cell?: string
}

/** Classes of failure; each has its own exit code. */
export type ProblemClass = 'wrongUse' | 'badInput' | 'store'

/**
 * Something wrong with what a person gave: what, where, and what would mend it.
 * Bad input is returned as a value; only mistakes of our own are thrown.
 */
export interface Problem {
  /** Stable name for machines, such as `unitUnknown`. Each module that makes problems lists its kinds in a closed union. */
  readonly kind: string
  readonly class: ProblemClass
  readonly place: Place
  /** What is wrong, one sentence. */
  readonly what: string
  /** What would mend it, one sentence that starts with a verb. */
  readonly mend: string
}
