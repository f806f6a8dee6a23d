import { SpillFile } from './spillFile.ts'

/** Rows in one piece of a column: 128 KiB. */
export const pieceRows = 16_384

/** Called on each piece before it is kept: numbers as read, in place to SI. `rows` of them hold something. */
export type Finish = (piece: readonly Float64Array[], firstRow: number, rows: number) => void

/**
 * Columns of a table that grow row by row, in pieces that are never moved. Above `spillAbove` rows the pieces go to
 * a temporary file, so that memory holds one piece of each column however long the record is.
 */
export class ColumnStore {
  /** Where the next rows go, from `filled` on; call `turn` when `filled` has reached `pieceRows`. */
  current: Float64Array[]
  filled = 0
  #kept: Float64Array[][] = []
  #pieces = 0
  #spill: SpillFile | undefined
  readonly #spillAbove: number
  readonly #finish: Finish

  /** `mostRows` saves room where it is known that no more rows will come. */
  constructor(options: {
    readonly columns: number
    readonly spillAbove: number
    readonly finish: Finish
    readonly mostRows?: number
  }) {
    this.current = fresh(options.columns, Math.min(pieceRows, (options.mostRows ?? pieceRows) + 1))
    this.#spillAbove = options.spillAbove
    this.#finish = options.finish
  }

  get rows(): number {
    return this.#pieces * pieceRows + this.filled
  }

  get spilled(): boolean {
    return this.#spill !== undefined
  }

  /** Puts the full piece away and begins the next. */
  turn(): void {
    this.#finish(this.current, this.#pieces * pieceRows, this.filled)
    const columns = this.current.length
    if (this.#spill === undefined && (this.#pieces + 1) * pieceRows > this.#spillAbove) {
      const spill = new SpillFile()
      for (const [number, piece] of this.#kept.entries()) writePiece(spill, number, piece)
      this.#kept = []
      this.#spill = spill
    }
    if (this.#spill === undefined) {
      this.#kept.push(this.current)
      this.current = fresh(columns, pieceRows)
    } else writePiece(this.#spill, this.#pieces, this.current)
    this.#pieces++
    this.filled = 0
  }

  /** Ends the growth; the last, shorter piece stays in memory. */
  end(): void {
    this.#finish(this.current, this.#pieces * pieceRows, this.filled)
    this.current = this.current.map((column) => column.slice(0, this.filled))
  }

  /** Rows `from` to `to` (exclusive) of one column. */
  read(column: number, from: number, to: number): Float64Array {
    this.#check(from, to)
    const first = Math.floor(from / pieceRows)
    if (to <= (first + 1) * pieceRows && (this.#spill === undefined || first === this.#pieces)) {
      return this.#piece(first)[column].subarray(from - first * pieceRows, to - first * pieceRows)
    }
    const out = new Float64Array(to - from)
    this.readInto(column, from, out)
    return out
  }

  /** As many rows of one column from `from` on as `out` holds, put into `out`. */
  readInto(column: number, from: number, out: Float64Array): void {
    const to = from + out.length
    this.#check(from, to)
    for (let row = from; row < to; ) {
      const piece = Math.floor(row / pieceRows)
      const start = row - piece * pieceRows
      const count = Math.min(pieceRows - start, to - row)
      const target = out.subarray(row - from, row - from + count)
      if (this.#spill !== undefined && piece < this.#pieces) {
        this.#spill.read((piece * this.current.length + column) * pieceRows + start, target)
      } else target.set(this.#piece(piece)[column].subarray(start, start + count))
      row += count
    }
  }

  close(): void {
    this.#spill?.close()
  }

  #check(from: number, to: number): void {
    if (from >= 0 && from <= to && to <= this.rows) return
    throw new RangeError(`rows ${from} to ${to} were asked for, the record has ${this.rows}`)
  }

  #piece(number: number): Float64Array[] {
    return number === this.#pieces ? this.current : this.#kept[number]
  }
}

const fresh = (columns: number, rows: number): Float64Array[] =>
  Array.from({ length: columns }, () => new Float64Array(rows))

function writePiece(spill: SpillFile, number: number, piece: readonly Float64Array[]): void {
  for (const [column, numbers] of piece.entries()) spill.write((number * piece.length + column) * pieceRows, numbers)
}
