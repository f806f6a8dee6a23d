import type { AsyncBuffer, FileMetaData } from 'hyparquet'
import { Clock } from './clock.ts'
import { ColumnStore, pieceRows } from './columnStore.ts'
import { DamageList } from './damage.ts'
import type { JudgedColumns } from './judgeColumns.ts'
import { mostProblems } from './problems.ts'
import type { CellMark } from './rowPlan.ts'
import { toSiInPlace } from './storedChannels.ts'

/** Rows of a Parquet file on their way into the store. Lines are rows of the table, from 1. */
export class ParquetRows {
  readonly clock = new Clock(mostProblems)
  readonly damage = new DamageList(mostProblems)
  readonly otherHeadings = undefined
  readonly brokenOff = undefined
  words = 0
  firstWord: CellMark | undefined
  readonly store: ColumnStore
  /** Column of time from 0, −1 without. */
  readonly timeColumn: number
  readonly #judged: JudgedColumns
  readonly #headings: readonly string[]
  /** Step of the last row that was kept. */
  #latestStep = Number.NaN

  constructor(table: {
    readonly judged: JudgedColumns
    readonly headings: readonly string[]
    readonly spillAbove: number
    readonly mostRows: number
  }) {
    this.#judged = table.judged
    this.#headings = table.headings
    this.timeColumn = table.judged.guesses.findIndex(({ channel }) => channel === 'time')
    this.store = new ColumnStore({
      columns: table.judged.slots.size,
      spillAbove: table.spillAbove,
      mostRows: table.mostRows,
      finish: (piece, firstRow, rows) => this.#finish(piece, firstRow, rows),
    })
  }

  /** Reads all row groups. Throws what the library throws on a broken file. */
  async read(
    file: AsyncBuffer,
    metadata: FileMetaData,
    progress: ((done: number, of: number) => void) | undefined,
  ): Promise<void> {
    const { parquetRead } = await import('hyparquet')
    const { compressors } = await import('hyparquet-compressors')
    const columns = this.#headings.filter((_, column) => this.#judged.columnSlots[column] >= 0)
    let first = 0
    for (const group of metadata.row_groups) {
      const rows = Number(group.num_rows)
      const numbers = Array.from({ length: this.#judged.slots.size }, () => new Float64Array(rows).fill(Number.NaN))
      const bad = new Uint8Array(rows)
      const onChunk = (chunk: { columnName: string; columnData: ArrayLike<unknown>; rowStart: number }): void => {
        const column = this.#headings.indexOf(chunk.columnName)
        const slot = this.#judged.columnSlots[column] ?? -1
        if (slot >= 0)
          this.#take(chunk.columnData, { column, out: numbers[slot], bad, from: chunk.rowStart - first, first })
      }
      if (columns.length > 0 && rows > 0) {
        await parquetRead({ file, metadata, columns, compressors, rowStart: first, rowEnd: first + rows, onChunk })
      }
      this.#append(numbers, bad, first)
      first += rows
      progress?.(Math.round((file.byteLength * first) / Number(metadata.num_rows)), file.byteLength)
    }
    this.store.end()
  }

  #take(
    values: ArrayLike<unknown>,
    to: {
      readonly column: number
      readonly out: Float64Array
      readonly bad: Uint8Array
      readonly from: number
      readonly first: number
    },
  ): void {
    const { column, out, bad, from, first } = to
    for (let at = 0; at < values.length && from + at < out.length; at++) {
      const row = from + at
      if (row < 0) continue
      const value = values[at]
      const number = typeof value === 'number' ? value : plainNumber(value)
      if (number === undefined) {
        if (bad[row] === 0) {
          this.damage.add({ kind: 'notANumber', line: first + row + 1, column: column + 1, cell: String(value) })
        }
        bad[row] = 1
      } else if (number === Number.POSITIVE_INFINITY || number === Number.NEGATIVE_INFINITY) {
        this.words++
        this.firstWord ??= { line: first + row + 1, column: column + 1, cell: String(value) }
      } else out[row] = number
    }
  }

  /** Puts the rows of one group into the store, without those that are damaged. */
  #append(numbers: readonly Float64Array[], bad: Uint8Array, first: number): void {
    const { store } = this
    for (let row = 0; row < bad.length; row++) {
      if (bad[row] !== 0 || !this.#timeRuns(numbers, row, first)) continue
      for (let slot = 0; slot < numbers.length; slot++) store.current[slot][store.filled] = numbers[slot][row]
      store.filled++
      if (store.filled === pieceRows) store.turn()
    }
  }

  #timeRuns(numbers: readonly Float64Array[], row: number, first: number): boolean {
    const timeSlot = this.#judged.slots.get('time')
    if (timeSlot === undefined) return true
    const time = numbers[timeSlot][row]
    const stepSlot = this.#judged.slots.get('step')
    const step = stepSlot === undefined ? Number.NaN : numbers[stepSlot][row]
    const line = first + row + 1
    if (Number.isNaN(time)) {
      if (numbers.some((column) => !Number.isNaN(column[row]))) {
        this.damage.add({ kind: 'noTime', line, column: this.timeColumn + 1, cell: '' })
      }
      return false
    }
    if (!this.clock.runs(time)) {
      const begins = stepSlot !== undefined && step !== this.#latestStep
      this.clock.back(time, { row: this.store.rows, line, begins })
    }
    this.#latestStep = step
    return true
  }

  #finish(piece: readonly Float64Array[], firstRow: number, rows: number): void {
    const { slots, units } = this.#judged
    for (const [channel, slot] of slots) {
      if (channel === 'time') this.clock.runOn(piece[slot], firstRow, rows)
      const unit = units[channel]
      if (unit !== undefined) toSiInPlace(piece[slot], rows, unit)
    }
  }
}

/** A cell as a number: NaN for an empty one, undefined for what is none. Points in time count in seconds since 1970. */
function plainNumber(value: unknown): number | undefined {
  if (value === null || value === undefined) return Number.NaN
  if (typeof value === 'bigint') return Number(value)
  if (value instanceof Date) return value.getTime() / 1000
  if (typeof value !== 'string') return undefined
  if (value.trim() === '') return Number.NaN
  const number = Number(value)
  return Number.isNaN(number) ? undefined : number
}
