import { exactTens } from './exactDecimal.ts'
import { NumberBytes, type NumberMarks } from './numberBytes.ts'

/** Bytes that shape a table of numbers. */
export interface TableMarks extends NumberMarks {
  /** 32 means any run of blanks and tabs. */
  readonly separator: number
}

/**
 * Reads cell after cell of a table straight from its bytes. `bytes` must end with a line end that the reader may
 * touch. Most cells go the short way: up to nine digits and a power of ten within 22 give the nearest double with
 * one multiplication or division of exact numbers (Clinger 1990); all others go through `NumberBytes`.
 */
export class CellReader {
  bytes: Uint8Array = new Uint8Array(1)
  /** Cells that held a word for "nothing" (NaN, inf, n/a), and where the latest one began. */
  words = 0
  latestWord = 0
  readonly #general: NumberBytes
  readonly #decimal: number
  readonly #quotedDecimal: number
  readonly #separator: number
  readonly #otherSeparator: number
  readonly #pad: number
  readonly #trailingPad: number

  constructor(marks: TableMarks) {
    this.#general = new NumberBytes(marks)
    this.#quotedDecimal = marks.decimal
    // Where both are commas, numbers with a fraction stand in quotes and take the slow way.
    this.#decimal = marks.decimal === marks.separator ? -1 : marks.decimal
    this.#separator = marks.separator
    this.#otherSeparator = marks.separator === 32 ? 9 : marks.separator
    this.#pad = marks.separator === 9 ? 32 : 9
    this.#trailingPad = marks.separator === 32 ? -1 : 32
  }

  /** Reads the cell at `at` into `out[row]` (NaN when empty). Gives the place of the mark after it, −1 for no number. */
  read(at: number, out: Float64Array, row: number): number {
    const bytes = this.bytes
    let p = at
    let c = bytes[p]
    while (c === 32 || c === this.#pad) c = bytes[++p]
    const start = p
    let decimal = this.#decimal
    const quoted = c === 34
    if (quoted) {
      c = bytes[++p]
      decimal = this.#quotedDecimal
    }
    const negative = c === 45
    if (negative) c = bytes[++p]
    let number = 0
    const whole = p
    while (c >= 48 && c <= 57) {
      number = (Math.imul(number, 10) + c - 48) | 0
      c = bytes[++p]
    }
    let digits = p - whole
    let significant = digits
    let power = 0
    if (c === decimal) {
      const first = ++p
      c = bytes[p]
      if (number === 0 && digits <= 9) {
        // The zeros of 0.000123 are no digits that could make the sum overflow.
        while (c === 48) c = bytes[++p]
        significant = first - p
      }
      while (c >= 48 && c <= 57) {
        number = (Math.imul(number, 10) + c - 48) | 0
        c = bytes[++p]
      }
      power = first - p
      digits -= power
      significant -= power
    }
    if (digits === 0 || significant > 9) return this.#slow(start, out, row)
    if ((c | 32) === 101) {
      const down = bytes[++p] === 45
      if (down || bytes[p] === 43) p++
      let exponent = bytes[p] - 48
      if (!(exponent >= 0 && exponent <= 9)) return this.#slow(start, out, row)
      c = bytes[++p]
      if (c >= 48 && c <= 57) {
        exponent = 10 * exponent + c - 48
        c = bytes[++p]
      }
      power += down ? -exponent : exponent
    }
    if (quoted) {
      if (c !== 34) return this.#slow(start, out, row)
      c = bytes[++p]
    }
    while (c === this.#trailingPad) c = bytes[++p]
    if ((c !== this.#separator && c !== 10 && c !== 13 && c !== this.#otherSeparator) || power < -22 || power > 22) {
      return this.#slow(start, out, row)
    }
    const size = power < 0 ? number / exactTens[-power] : number * exactTens[power]
    out[row] = negative ? -size : size
    return p
  }

  /** Steps over the cell at `at`, whatever it holds. */
  skip(at: number): number {
    const bytes = this.bytes
    let p = at
    let c = bytes[p]
    while (c === 32 || c === this.#pad) c = bytes[++p]
    if (c === 34) {
      const after = this.#afterQuotes(p)
      if (after >= 0) p = after
      c = bytes[p]
    }
    while (c !== this.#separator && c !== 10 && c !== 13 && c !== this.#otherSeparator) c = bytes[++p]
    return p
  }

  #slow(start: number, out: Float64Array, row: number): number {
    const bytes = this.bytes
    let from = start
    let end: number
    let to: number
    if (bytes[start] === 34) {
      end = this.#afterQuotes(start)
      if (end < 0) return -1
      from = start + 1
      to = end - 1
      while (bytes[end] === this.#trailingPad) end++
      if (!this.#isMark(bytes[end])) return -1
    } else {
      end = start
      while (!this.#isMark(bytes[end])) end++
      to = end
    }
    const content = this.#general.read(bytes, from, to)
    if (content === 'damaged') return -1
    if (content === 'wordForNothing') {
      this.words++
      this.latestWord = from
    }
    out[row] = this.#general.value
    return end
  }

  /** The place after the closing quotation mark of the one at `at`; −1 when the line ends first. */
  #afterQuotes(at: number): number {
    const bytes = this.bytes
    let p = at
    for (;;) {
      const c = bytes[++p]
      if (c === 10 || c === 13) return -1
      if (c === 34) {
        if (bytes[p + 1] !== 34) return p + 1
        p++
      }
    }
  }

  #isMark(c: number): boolean {
    return c === this.#separator || c === 10 || c === 13 || c === this.#otherSeparator
  }
}
