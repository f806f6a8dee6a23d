/** One value that went into a computed number. */
export interface WhyValue {
  /** Sign in the formula: F, R, E*. */
  readonly sign: string
  readonly words: string
  /** With its unit, as printed. */
  readonly value: string
}

/** The answer to "why?" for a number that the program computed. */
export interface Why {
  /** Stable name; stands in the address while the answer is open. */
  readonly key: string
  /** What the number is: "peak pressure in one contact". */
  readonly what: string
  readonly formula: string
  readonly values: readonly WhyValue[]
  readonly source: string
  readonly validity: string
  /** What would change it, one sentence. */
  readonly changes: string
  /** Entry of the glossary that says more. */
  readonly word?: string
}
