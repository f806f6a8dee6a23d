import type { AsyncBuffer, FileMetaData } from 'hyparquet'
import { siUnit } from '../../core/quantity/index.ts'
import { channelNames, done, failed, type Outcome } from '../../core/terms/index.ts'
import { type ByteSource, wholeOf } from './byteSource.ts'
import { judgeColumns } from './judgeColumns.ts'
import { ParquetRows } from './parquetRows.ts'
import { capped, shown, type TableProblem, tableProblem } from './problems.ts'
import { fileRanges, memoryRanges, type Ranges } from './ranges.ts'
import { type ReadOptions, usualSpillAbove } from './readOptions.ts'
import { rowProblems, rowRemarks } from './rowProblems.ts'
import { storedChannels } from './storedChannels.ts'
import type { UnsignedRecord } from './textRecord.ts'
import { channelDimensions } from './vocabulary.ts'

/** A Parquet file that cannot be read by ranges is held in memory up to this size. */
const mostInMemory = 1 << 30

/** Reads a Parquet file, one row group after the other. Units stand in the column names. */
export async function parquetRecord(
  bytes: ByteSource,
  source: string | Uint8Array,
  options: ReadOptions,
): Promise<Outcome<UnsignedRecord>> {
  const ranges = await rangesOf(bytes, source)
  if (ranges === undefined) {
    return failed(
      tableProblem('fileTooLarge', {
        what: 'The Parquet data come through a pipe and are too many to be held in memory.',
        mend: 'Hand in the file itself.',
        place: { file: options.file },
      }),
    )
  }
  try {
    return await readGroups(ranges, options)
  } catch (error) {
    // The library throws plain errors of many sorts on files that are not what they say.
    if (error instanceof Error && !('syscall' in error)) return failed(damaged(error.message, options.file))
    throw error
  } finally {
    await ranges.close()
  }
}

/** Access by ranges, once all bytes have passed through the hash. */
async function rangesOf(bytes: ByteSource, source: string | Uint8Array): Promise<Ranges | undefined> {
  if (typeof source === 'string' && bytes.size === undefined) {
    const all = await wholeOf(bytes, mostInMemory)
    return all === undefined ? undefined : memoryRanges(all)
  }
  const buffer = new Uint8Array(1 << 20)
  while ((await bytes.read(buffer, 0)) === buffer.length);
  return typeof source === 'string' ? fileRanges(source) : memoryRanges(source)
}

async function readGroups(file: AsyncBuffer, options: ReadOptions): Promise<Outcome<UnsignedRecord>> {
  const { parquetMetadataAsync, parquetSchema } = await import('hyparquet')
  const metadata = await parquetMetadataAsync(file)
  const headings = parquetSchema(metadata).children.map(({ element }) => element.name)
  const impossible = contradiction(metadata, file.byteLength)
  if (impossible !== undefined) return failed(damaged(impossible, options.file))
  const judged = judgeColumns(
    headings.map((heading) => ({ heading, unitBelow: ownUnit(heading, metadata) })),
    options,
    { file: options.file, line: undefined },
  )
  options.onLook?.({ headings, guesses: judged.guesses, rows: [], firstLine: 1, preamble: [] })
  const limit = options.spillAbove ?? usualSpillAbove
  const count = Number(metadata.num_rows)
  const rows = new ParquetRows({ judged, headings, spillAbove: count > limit ? 0 : limit, mostRows: count })
  try {
    await rows.read(file, metadata, options.progress)
  } catch (error) {
    rows.store.close()
    throw error
  }
  const talk = {
    file: options.file,
    headings,
    decimalMark: '.',
    rows: rows.store.rows,
    timeColumn: rows.timeColumn,
  } as const
  const found = rowProblems(rows, talk)
  const problems: TableProblem[] = [...judged.problems, ...found.problems]
  if (problems.length > 0) {
    rows.store.close()
    return failed(...capped(problems, found.uncounted, options.file))
  }
  return done({
    channels: storedChannels(rows.store, judged.slots, []),
    rows: rows.store.rows,
    columns: judged.guesses,
    dialect: plainDialect,
    preamble: [],
    remarks: rowRemarks(rows, talk),
    close: () => rows.store.close(),
  })
}

/** Columns that this program wrote are named after their channels and hold SI. */
function ownUnit(heading: string, metadata: FileMetaData): string {
  const channel = channelNames.find((name) => name === heading)
  if (metadata.created_by !== 'kufe' || channel === undefined || channel === 'step') return ''
  return siUnit(channelDimensions[channel])
}

const plainDialect = {
  format: 'parquet',
  encoding: 'utf-8',
  separator: ',',
  decimalMark: '.',
  thousandsMark: null,
  preambleLines: 0,
  headerLine: null,
  unitRow: false,
  repeatedHeadings: 0,
} as const

/** Numbers in the directory that cannot be true; found here, they cannot make the reader take memory without end. */
function contradiction(metadata: FileMetaData, size: number): string | undefined {
  const groups = metadata.row_groups
  const rows = groups.reduce((sum, group) => sum + Number(group.num_rows), 0)
  if (rows !== Number(metadata.num_rows) || rows > 2 ** 31) return 'its row counts contradict each other'
  for (const group of groups) {
    if (!(Number(group.num_rows) >= 0 && Number(group.num_rows) <= 2 ** 27)) return 'a row group has too many rows'
    for (const { meta_data: column } of group.columns) {
      if (column === undefined) return 'the description of a column is missing'
      const from = Number(column.dictionary_page_offset ?? column.data_page_offset)
      const packed = Number(column.total_compressed_size)
      if (!(from >= 4 && packed >= 0 && from + packed <= size)) return 'a column lies outside the file'
      if (!(Number(column.total_uncompressed_size) <= 2 ** 31)) return 'a column is too large'
    }
  }
  return undefined
}

const damaged = (why: string, file: string | undefined): TableProblem =>
  tableProblem('fileDamaged', {
    what: `The Parquet file cannot be read: ${shown(why)}.`,
    mend: 'Write or copy it again; it may be cut off.',
    place: { file },
  })
