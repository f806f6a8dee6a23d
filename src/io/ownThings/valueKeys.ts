import type { Dimension } from '../../core/quantity/index.ts'
import { quantityKey } from '../question/askKeys.ts'
import type { Key, Range, Section } from '../setup/keyKinds.ts'

interface ValueWords {
  readonly about: string
  readonly example: string
  readonly range: Range
}

/** A value with the span in which it lies and a source of its own: `{ value: 9 GPa, low: 8 GPa, high: 10 GPa }`. */
export const valueSection = (
  dimension: Dimension,
  { about, example, range }: ValueWords,
  more: Readonly<Record<string, Key>> = {},
): Section => ({
  is: 'section',
  about,
  keys: {
    ...more,
    value: quantityKey(dimension, range, { example, required: true, about: 'The usual value.' }),
    low: quantityKey(dimension, range, { example, about: 'Lowest that it may be.' }),
    high: quantityKey(dimension, range, { example, about: 'Highest that it may be.' }),
    source: {
      is: 'text',
      example: 'bending test',
      about: 'Where this value comes from, if not from the source above.',
    },
  },
})

/** Keys that every own thing has. */
export const namedKeys = (example: string): Readonly<Record<string, Key>> => ({
  name: { is: 'text', required: true, example, about: 'The name by which questions and setups ask for it.' },
  synonyms: { is: 'text', example: 'ours, batch 12', about: 'Other names, with commas between them.' },
  source: {
    is: 'text',
    required: true,
    example: 'our bending test of 3 November, five strips',
    about: 'Where the numbers come from: a record, a data sheet, a person.',
  },
  note: { is: 'text', example: 'along the grain', about: 'What to mind when the values are used.' },
})
