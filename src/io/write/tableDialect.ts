import type { ChannelName } from '../../core/terms/index.ts'

/** How the bytes of a table stand for its letters. */
export type TableEncoding = 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be' | 'latin-1'

/** How a record is put down as text. */
export interface TableDialect {
  /** `aligned` pads with blanks to even columns. */
  readonly separator: ',' | ';' | '\t' | 'aligned'
  readonly decimalMark: '.' | ','
  readonly lineEnd: '\n' | '\r\n'
  readonly encoding: TableEncoding
  readonly language: 'en' | 'de'
  /** Where the units stand; `none` leaves them out. */
  readonly units: 'row' | 'squareBrackets' | 'roundBrackets' | 'none'
  /** Columns in their order; all that the record has when undefined. */
  readonly columns?: readonly ChannelName[]
  /** Unit of a column; the SI unit when undefined (°C for temperature). */
  readonly unitNames: Readonly<Partial<Record<ChannelName, string>>>
  /** Heading of a column instead of the usual word. */
  readonly headings: Readonly<Partial<Record<ChannelName, string>>>
  /** Lines before the headings, as they stand. */
  readonly preamble: readonly string[]
  /** Blank line, headings and units again at every step. */
  readonly repeatHeadings: boolean
  /** Significant digits, 1 … 15; step and time are written in full. */
  readonly digits: number
}

/** Commas, points, SI with °C, one row of units, UTF-8. */
export const plainDialect: TableDialect = {
  separator: ',',
  decimalMark: '.',
  lineEnd: '\n',
  encoding: 'utf-8',
  language: 'en',
  units: 'row',
  unitNames: {},
  headings: {},
  preamble: [],
  repeatHeadings: false,
  digits: 7,
}
