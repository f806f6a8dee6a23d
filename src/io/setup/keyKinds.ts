import { type Dimension, printExact } from '../../core/quantity/index.ts'

/** Allowed values in SI; `above` and `below` leave the end out, `least` and `most` take it in. */
export interface Range {
  readonly above?: number
  readonly least?: number
  readonly below?: number
  readonly most?: number
}

interface Described {
  /** One or two sentences for people: editors, the starter file and the manual show them. */
  readonly about: string
  readonly required?: true
}

export interface QuantityKey extends Described {
  readonly is: 'quantity'
  readonly dimension: Dimension
  readonly range: Range
  /** A value as people write it, for the starter file. */
  readonly example: string
  /** What holds when the key is absent; undefined when nothing is assumed. */
  readonly default?: string
}

export interface TextKey extends Described {
  readonly is: 'text'
  readonly example: string
}

export interface ChoiceKey extends Described {
  readonly is: 'choice'
  readonly choices: readonly string[]
  readonly example: string
  readonly default?: string
}

export interface Section extends Described {
  readonly is: 'section'
  readonly keys: Readonly<Record<string, Key>>
}

/** A section whose keys depend on the word under `on`. */
export interface Variants extends Described {
  readonly is: 'variants'
  readonly on: string
  readonly variants: Readonly<Record<string, Section>>
}

/** What a person says about the columns of a record: heading → channel and unit. */
export interface ColumnsKey extends Described {
  readonly is: 'columns'
}

export type Key = QuantityKey | TextKey | ChoiceKey | Section | Variants | ColumnsKey

/** The allowed values of a key in words: `more than 0 mm, at most 0.5 m`. */
export function rangeInWords({ range, dimension, example }: QuantityKey): string {
  // Ratios that people write without % are told without it.
  const said = (value: number): string =>
    dimension === 'ratio' && !example.includes('%') ? String(value) : printExact(value, dimension)
  const { above, least, below, most } = range
  const ends = [
    above === undefined ? '' : `more than ${said(above)}`,
    least === undefined ? '' : `at least ${said(least)}`,
    below === undefined ? '' : `less than ${said(below)}`,
    most === undefined ? '' : `at most ${said(most)}`,
  ]
  return ends.filter((words) => words !== '').join(', ')
}

/** NaN lies in no range. */
export const isWithin = (value: number, { above, least, below, most }: Range): boolean =>
  Number.isFinite(value) &&
  (above === undefined || value > above) &&
  (least === undefined || value >= least) &&
  (below === undefined || value < below) &&
  (most === undefined || value <= most)
