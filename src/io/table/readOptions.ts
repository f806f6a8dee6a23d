import type { ChannelName } from '../../core/terms/index.ts'
import type { ColumnAnswers } from './answers.ts'
import type { Encoding } from './encoding.ts'
import type { DecimalMark, Separator } from './rawRecord.ts'
import type { TableLook } from './tableLook.ts'

/** Answers and wishes for reading one file. All that is not given is found out. */
export interface ReadOptions {
  /** What columns hold, by heading, by its words or by number (`#3`). */
  readonly columns?: ColumnAnswers
  /** A mapping that was kept under a name; `columns` and the options below go before it. */
  readonly mapping?: NamedMapping
  readonly separator?: Separator
  readonly decimalMark?: DecimalMark
  readonly encoding?: Encoding
  /** Name or number (from 1) of the sheet in a workbook; the first one if not given. */
  readonly sheet?: string | number
  /** Channels without which the record is refused. If not given: time, and torque or friction force. */
  readonly required?: readonly ChannelName[]
  /** Name of the file for the places of problems, where bytes are handed in. */
  readonly file?: string
  /** Records of more rows than this are kept in a temporary file. */
  readonly spillAbove?: number
  /** Called with the beginning of the table as soon as its columns were judged, whether or not it can be read. */
  readonly onLook?: (look: TableLook) => void
  /** Called with bytes done and bytes in all (0 where unknown). */
  readonly progress?: (done: number, of: number) => void
}

/** How to read files of one kind, kept under a name for next time. */
export interface NamedMapping {
  readonly name: string
  readonly columns: ColumnAnswers
  readonly separator?: Separator
  readonly decimalMark?: DecimalMark
  readonly encoding?: Encoding
  readonly sheet?: string | number
}

/** Rows that stay in memory: eight columns of them are 16 MB. Writing more and reading it again takes no longer than keeping it. */
export const usualSpillAbove = 250_000
