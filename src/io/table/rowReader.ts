import { CellReader } from './cellReader.ts'
import { splitCells } from './cells.ts'
import { Clock } from './clock.ts'
import { type ColumnStore, pieceRows } from './columnStore.ts'
import { type DamageKind, DamageList } from './damage.ts'
import { decodeText } from './encoding.ts'
import { judgeOddLine } from './oddLine.ts'
import type { CellMark, RowPlan, Section } from './rowPlan.ts'
import type { LineWindow } from './wholeLines.ts'

/** Reads window after window of lines into a store and keeps what was odd about them. */
export class RowReader {
  readonly clock: Clock
  readonly damage: DamageList
  readonly sections: Section[] = []
  repeatedHeadings = 0
  otherHeadings: CellMark | undefined
  /** Cells with a word for "nothing" in rows that were kept, and the first of them. */
  words = 0
  firstWord: CellMark | undefined
  /** The last line stops early and was left out. */
  brokenOff: CellMark | undefined

  readonly #plan: RowPlan
  readonly #store: ColumnStore
  readonly #cells: CellReader
  readonly #slots: Int16Array
  #line: number
  #window: LineWindow = { bytes: new Uint8Array(1), from: 0, to: 0, last: false }
  /** Words that are damage unless headings follow. */
  #pending: CellMark[] = []
  #begins: { readonly number: number | undefined } | undefined
  /** A section or words wait for the next good row. */
  #waiting = false
  /** Step of the row before this piece. */
  #stepBefore = Number.NaN

  constructor(plan: RowPlan, store: ColumnStore) {
    this.#plan = plan
    this.#store = store
    this.#cells = new CellReader(plan.marks)
    this.#slots = Int16Array.from(plan.slots)
    this.#line = plan.firstLine
    this.damage = new DamageList(plan.keep)
    this.clock = new Clock(plan.keep)
  }

  /** Number of the line to be read next. */
  get line(): number {
    return this.#line
  }

  /** Reads the lines of one window. */
  feed(window: LineWindow): void {
    const { bytes, to } = window
    const cells = this.#cells
    const store = this.#store
    const timeSlot = this.#plan.timeSlot
    this.#window = window
    bytes[to] = 10
    cells.bytes = bytes
    for (let p = window.from; p < to; this.#line++) {
      const start = p
      cells.words = 0
      p = this.#row(p)
      if (p >= 0) {
        if (this.#waiting) this.#settle()
        if (cells.words > 0) this.#noteWords(start)
        if (timeSlot < 0 || this.clock.runs(store.current[timeSlot][store.filled]) || this.#oddTime(start)) {
          store.filled++
          if (store.filled === pieceRows) this.#turn()
        }
      } else p = ~p
      while (bytes[p] !== 10 && bytes[p] !== 13) p++
      p += bytes[p] === 13 && bytes[p + 1] === 10 ? 2 : 1
    }
  }

  /** To be called after the last window. */
  end(): void {
    this.#admitPending()
    this.#store.end()
  }

  /** Reads one row; gives a place in its line, as complement (~p) when the row is not to be kept. */
  #row(start: number): number {
    const cells = this.#cells
    const slots = this.#slots
    const store = this.#store
    const bytes = cells.bytes
    const { separator } = this.#plan.marks
    const width = slots.length
    let p = start
    for (let column = 0; column < width; column++) {
      const slot = slots[column]
      const next = slot < 0 ? cells.skip(p) : cells.read(p, store.current[slot], store.filled)
      if (next < 0) return this.#strange(start, column, 'notANumber') ? p : ~p
      p = next
      const c = bytes[p]
      if (c === 10 || c === 13) {
        if (column === width - 1) return p
        return this.#short(start, column) ? p : ~p
      }
      p++
    }
    // A separator follows the last cell, which is nothing odd if nothing follows the separator.
    let c = bytes[p]
    while (c === 32 || c === 9 || c === separator) c = bytes[++p]
    if (c === 10 || c === 13) return p
    this.#strange(start, width, 'tooManyCells')
    return ~p
  }

  /** A row that ends after the cell `column`: true where all that is needed was there. */
  #short(start: number, column: number): boolean {
    const broken =
      this.#isUnfinished(this.#lineEnd(start)) && this.#slots.subarray(column + 1).some((slot) => slot >= 0)
    if (column < this.#plan.lastNeeded || broken) {
      return this.#strange(start, column + 1, 'tooFewCells')
    }
    for (let rest = column + 1; rest < this.#slots.length; rest++) {
      const slot = this.#slots[rest]
      if (slot >= 0) this.#store.current[slot][this.#store.filled] = Number.NaN
    }
    return true
  }

  /** A line that is no row of the table; `column` (from 0) is where that was seen. Always false. */
  #strange(start: number, column: number, kind: DamageKind): false {
    const end = this.#lineEnd(start)
    if (end === start) return false
    const line = judgeOddLine(this.#window.bytes.subarray(start, end), this.#plan.head)
    switch (line.kind) {
      case 'blank':
      case 'units':
        return false
      case 'headings':
        this.repeatedHeadings++
        this.#pending = []
        this.#begins ??= { number: undefined }
        this.#waiting = true
        return false
      case 'section':
        this.#begins = { number: line.number }
        this.#waiting = true
        return false
    }
    const mark = { line: this.#line, column: column + 1, cell: line.cells[column] ?? '' }
    if (this.#isUnfinished(end)) this.brokenOff = mark
    else if (line.kind === 'otherHeadings') this.otherHeadings ??= mark
    else if (line.kind === 'words') {
      this.#pending.push(mark)
      this.#waiting = true
    } else this.damage.add({ kind, ...mark })
    return false
  }

  /** The record ends without a line end and this is its last line. */
  #isUnfinished(end: number): boolean {
    return this.#window.last && end === this.#window.to
  }

  /** Now that a good row follows: pending words were damage, and a section may begin. */
  #settle(): void {
    this.#waiting = false
    this.#admitPending()
    if (this.#begins !== undefined) this.sections.push({ row: this.#store.rows, ...this.#begins })
    this.#begins = undefined
  }

  #admitPending(): void {
    for (const mark of this.#pending) this.damage.add({ kind: 'notANumber', ...mark })
    this.#pending = []
  }

  /** A row whose time is missing or runs back: true where the row is kept. */
  #oddTime(start: number): boolean {
    const { current, filled, rows } = this.#store
    const { timeSlot } = this.#plan
    const time = current[timeSlot][filled]
    if (Number.isNaN(time)) {
      if (current.some((column) => !Number.isNaN(column[filled]))) {
        this.#strange(start, this.#slots.indexOf(timeSlot), 'noTime')
      }
      return false
    }
    const begins = this.sections.at(-1)?.row === rows || this.#stepChanged()
    this.clock.back(time, { row: rows, line: this.#line, begins })
    return true
  }

  #stepChanged(): boolean {
    const { stepSlot } = this.#plan
    if (stepSlot < 0) return false
    const { current, filled } = this.#store
    return current[stepSlot][filled] !== (filled > 0 ? current[stepSlot][filled - 1] : this.#stepBefore)
  }

  #turn(): void {
    const { stepSlot } = this.#plan
    if (stepSlot >= 0) this.#stepBefore = this.#store.current[stepSlot][pieceRows - 1]
    this.#store.turn()
  }

  #noteWords(start: number): void {
    this.words += this.#cells.words
    if (this.firstWord !== undefined) return
    const { encoding, separator } = this.#plan.head
    const bytes = this.#window.bytes
    const before = splitCells(decodeText(bytes.subarray(start, this.#cells.latestWord), encoding), separator)
    const line = splitCells(decodeText(bytes.subarray(start, this.#lineEnd(start)), encoding), separator)
    const column = Math.max(1, separator === ' ' ? before.length + 1 : before.length)
    this.firstWord = { line: this.#line, column, cell: line[column - 1] ?? '' }
  }

  #lineEnd(start: number): number {
    const { bytes } = this.#window
    let end = start
    while (bytes[end] !== 10 && bytes[end] !== 13) end++
    return end
  }
}
