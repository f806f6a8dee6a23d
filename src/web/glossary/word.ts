/** One entry of the glossary. */
export interface Word {
  /** Stands in the address: `?word=lambda`. A remark's key is its kind. */
  readonly key: string
  readonly name: string
  readonly meaning: string
  readonly formula?: string
  /** Where the formula or the limit comes from; "definition" where it is one. */
  readonly source: string
}
