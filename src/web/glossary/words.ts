/** One entry of the glossary. */
export interface Word {
  /** Stands in the address: `?word=lambda`. A remark's key is its kind. */
  readonly key: string
  readonly name: string
  readonly meaning: string
  readonly formula?: string
  readonly source: string
}

/** Every term that the bench uses. */
export const words: readonly Word[] = [
  {
    key: 'lambda',
    name: 'λ',
    meaning:
      'Film thickness over the combined roughness of both bodies: about 1 the surfaces begin to part, about 3 they are apart.',
    formula: 'λ = h / √(Rq₁² + Rq₂²)',
    source: 'Tallian 1967; bounds are conventions.',
  },
]
