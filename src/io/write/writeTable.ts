import type { ChannelName, Channels } from '../../core/terms/index.ts'
import { ByteText } from './byteText.ts'
import { byteOrderMark, encodeAscii, encodeText } from './encodeText.ts'
import type { TableDialect } from './tableDialect.ts'
import { alignedWidth, headedColumns, headingLines, type TableColumn } from './tableHeadings.ts'

/**
 * A record as a text table, piece by piece. `chunks` are consecutive rows of one record, all with the same columns.
 * Throws RangeError for a dialect that cannot be read back (comma for both jobs, a column or step that the record lacks).
 */
export function* writeTable(chunks: Iterable<Channels>, dialect: TableDialect): Generator<Uint8Array, void> {
  check(dialect)
  const { encoding, lineEnd } = dialect
  const text = new ByteText(dialect.decimalMark)
  const lines = (rows: readonly string[]): Uint8Array => encodeText(rows.map((row) => row + lineEnd).join(''), encoding)
  let columns: readonly TableColumn[] | undefined
  let headings: readonly string[] = []
  let step = Number.NaN
  for (const chunk of chunks) {
    if (columns === undefined) {
      columns = headedColumns(dialect.columns ?? chunk.names, dialect)
      headings = headingLines(columns, dialect)
      yield byteOrderMark(encoding)
      yield lines([...dialect.preamble, ...headings])
      step = dialect.repeatHeadings ? chunk.read('step', 0, 1)[0] : step
    }
    for (const run of dialect.repeatHeadings ? stepRuns(chunk) : [{ from: 0, to: chunk.rows, step }]) {
      if (run.step !== step && dialect.repeatHeadings) yield lines(['', ...headings])
      step = run.step
      putRows(text, chunk, { ...run, columns, dialect })
      yield encodeAscii(text.take(), encoding)
    }
  }
}

/** The whole table at once. */
export function tableBytes(channels: Channels, dialect: TableDialect): Uint8Array {
  const pieces = [...writeTable([channels], dialect)]
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}

interface Rows {
  readonly from: number
  readonly to: number
  readonly columns: readonly TableColumn[]
  readonly dialect: TableDialect
}

function putRows(text: ByteText, chunk: Channels, { from, to, columns, dialect }: Rows): void {
  const values = columns.map((column) => inUnit(chunk.read(column.name, from, to), column))
  const aligned = dialect.separator === 'aligned'
  const between = dialect.separator.charCodeAt(0)
  const ends = Array.from(dialect.lineEnd, (letter) => letter.charCodeAt(0))
  for (let row = 0; row < to - from; row++) {
    for (let i = 0; i < columns.length; i++) {
      const start = text.length
      if (i > 0 && !aligned) text.letter(between)
      text.number(values[i][row], columns[i].digits)
      if (aligned) text.padFrom(start, alignedWidth)
    }
    for (const end of ends) text.letter(end)
  }
}

function inUnit(values: Float64Array, { factor, offset }: TableColumn): Float64Array {
  if (factor === 1 && offset === 0) return values
  // Dividing by 1e-3 and multiplying by 1000 differ in the last bit; the whole number is the exact one.
  const inverse = Math.round(1 / factor)
  const times = inverse > 1 && 1 / inverse === factor ? inverse : undefined
  return values.map((value) => (times === undefined ? (value - offset) / factor : (value - offset) * times))
}

/** Stretches of a chunk with one step number each. */
function stepRuns(chunk: Channels): { from: number; to: number; step: number }[] {
  const steps = chunk.read('step', 0, chunk.rows)
  const runs: { from: number; to: number; step: number }[] = []
  let from = 0
  for (let row = 1; row <= steps.length; row++) {
    if (row < steps.length && steps[row] === steps[from]) continue
    runs.push({ from, to: row, step: steps[from] })
    from = row
  }
  return runs
}

function check(dialect: TableDialect): void {
  if (dialect.separator === ',' && dialect.decimalMark === ',') {
    throw new RangeError('separator and decimalMark must differ, both are ","')
  }
  if (!(Number.isInteger(dialect.digits) && dialect.digits >= 1 && dialect.digits <= 15)) {
    throw new RangeError(`digits must be a whole number from 1 to 15, got ${dialect.digits}`)
  }
  const names: readonly ChannelName[] = dialect.columns ?? ['time']
  if (names.length === 0) throw new RangeError('columns must name at least one channel, got none')
}
