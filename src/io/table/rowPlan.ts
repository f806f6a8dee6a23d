import type { TableMarks } from './cellReader.ts'
import type { KnownHead } from './oddLine.ts'

/** How to read the rows of one table. */
export interface RowPlan {
  readonly marks: TableMarks
  readonly head: KnownHead
  /** Place in the store of each column of the table, −1 for one that is left aside. */
  readonly slots: readonly number[]
  /** A row that ends before this column (from 0) is damaged; cells after it may be missing. */
  readonly lastNeeded: number
  /** Place of time and step in the store, −1 without. */
  readonly timeSlot: number
  readonly stepSlot: number
  /** Line number of the first line to read. */
  readonly firstLine: number
  /** How many findings of each sort are kept with their place. */
  readonly keep: number
}

/** A stretch of rows under headings of its own; `number` where a line above names it. */
export interface Section {
  readonly row: number
  readonly number: number | undefined
}

/** A cell and where it stands; line and column count from 1. */
export interface CellMark {
  readonly line: number
  readonly column: number
  readonly cell: string
}
