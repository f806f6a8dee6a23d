import type { ChannelName, Channels, Remark, Sha256 } from '../../core/terms/index.ts'
import type { Encoding } from './encoding.ts'

/** Who decided what a column holds: our guess, an option of this call, or a mapping kept under a name. */
export type ColumnSource = 'guess' | 'option' | 'mapping'

/** What one column of the table was taken for. */
export interface ColumnGuess {
  /** Column number in the file, from 1; 0 for a channel that comes from no column. */
  readonly column: number
  /** Heading as it stands in the file, with its unit. */
  readonly heading: string
  /** Unit text that was used, "" where there is none. */
  readonly unit: string
  /** null for a column that is left aside and not stored. */
  readonly channel: ChannelName | null
  readonly source: ColumnSource
  /** One short sentence. */
  readonly reason: string
}

export type Separator = ',' | ';' | '\t' | '|' | ' '
export type DecimalMark = '.' | ','

/** How the file writes its table. */
export interface Dialect {
  readonly format: 'text' | 'xlsx' | 'parquet'
  readonly encoding: Encoding
  /** ' ' stands for any run of blanks. */
  readonly separator: Separator
  readonly decimalMark: DecimalMark
  /** Mark between groups of three digits, null where none was seen. */
  readonly thousandsMark: string | null
  /** Lines above the headings. */
  readonly preambleLines: number
  /** Line of the headings, from 1; null where the table has none. */
  readonly headerLine: number | null
  readonly unitRow: boolean
  /** How often the headings came again. */
  readonly repeatedHeadings: number
}

/** A text found above the headings. */
export interface PreambleEntry {
  readonly line: number
  /** "" where the line is one text. */
  readonly key: string
  readonly value: string
}

/** One imported file: its channels in SI units and how each came about. Call `close` when done with a long record. */
export interface RawRecord {
  readonly channels: Channels
  readonly rows: number
  /** Of the raw bytes as they came. */
  readonly sha256: Sha256
  readonly columns: readonly ColumnGuess[]
  readonly dialect: Dialect
  readonly preamble: readonly PreambleEntry[]
  readonly remarks: readonly Remark[]
  /** Lets go of the temporary file behind a long record; the channels cannot be read afterwards. */
  close(): void
}
