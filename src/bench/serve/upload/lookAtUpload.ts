import { done, type Outcome, type Problem } from '../../../core/terms/index.ts'
import {
  type ColumnAnswers,
  type Dialect,
  type RawRecord,
  type ReadOptions,
  readRecord,
  type TableLook,
} from '../../../io/index.ts'

/** What somebody said about the columns and the dialect of a table. */
export type ReadingWords = Pick<ReadOptions, 'separator' | 'decimalMark' | 'encoding' | 'sheet'> & {
  readonly columns?: ColumnAnswers
}

/** What a file looks like, and what stands in the way of keeping it. */
export interface LookedUpload {
  readonly look: TableLook | null
  /** null while problems stand in the way. */
  readonly rows: number | null
  readonly dialect: Dialect | null
  readonly columns: RawRecord['columns']
  readonly problems: readonly Problem[]
  readonly sha256: string | null
}

/** Reads a file as a record to see what it is; keeps nothing. */
export async function lookAtUpload(file: string, name: string, reading: ReadingWords): Promise<Outcome<LookedUpload>> {
  let look: TableLook | null = null
  const onLook = (seen: TableLook): void => {
    look = seen
  }
  const read = await readRecord(file, { ...reading, file: name, onLook })
  const seen = look as TableLook | null // set by the callback, which the compiler does not follow
  if (!read.ok) {
    const { problems } = read
    return done({ look: seen, rows: null, dialect: null, columns: seen?.guesses ?? [], problems, sha256: null })
  }
  const { rows, dialect, columns, sha256, close } = read.value
  close.call(read.value)
  return done({ look: seen, rows, dialect, columns, problems: [], sha256 })
}
