import type { ColumnGuess, PreambleEntry } from './rawRecord.ts'

/** The beginning of a table as it stands in the file, with what its columns were taken for. */
export interface TableLook {
  readonly headings: readonly string[]
  readonly guesses: readonly ColumnGuess[]
  /** Cells of the first rows, as texts. */
  readonly rows: readonly (readonly string[])[]
  /** Line of the first row, from 1. */
  readonly firstLine: number
  readonly preamble: readonly PreambleEntry[]
}
