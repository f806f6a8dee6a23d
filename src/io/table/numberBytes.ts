import { exactDecimal, exactTens } from './exactDecimal.ts'

/**
 * Bytes that have a meaning inside a number. `thousands` is 0 where no such mark was seen so far; then one is believed
 * only in a number that has a decimal mark as well (1.234,5), because 1,234 alone may be a misplaced decimal.
 */
export interface NumberMarks {
  readonly decimal: number
  readonly thousands: number
}

/** The byte for a thousands mark; blanks and apostrophes of all kinds are read as the plain ones. 0 without a mark. */
export function thousandsByte(mark: string | null): number {
  if (mark === null) return 0
  return /\s/.test(mark) ? 32 : mark === '’' ? 39 : mark.charCodeAt(0)
}

/** What a cell held: a number, nothing (or a word for nothing), or something that is no number. */
export type CellContent = 'number' | 'empty' | 'wordForNothing' | 'damaged'

/** Longest text that may be one number; anything longer is damage, whatever it holds. */
const longestNumber = 400

/** Digits of a number that count here; one with more goes to `Number()`. Two parts of nine each fit into integers. */
const mostDigits = 18

/**
 * Reads one cell of any shape: signs, thousands marks, up to 18 digits exactly and more through `Number()`,
 * exponents, words for "nothing". Slower than the short way in `cellReader.ts`, and complete.
 */
export class NumberBytes {
  value = Number.NaN
  readonly #decimal: number
  readonly #thousands: number

  constructor({ decimal, thousands }: NumberMarks) {
    this.#decimal = decimal
    this.#thousands = thousands
  }

  /** Reads `bytes` from `first` to `end`, leaves the number in `value` (NaN unless it is one). */
  read(bytes: Uint8Array, first: number, end: number): CellContent {
    this.value = Number.NaN
    let from = first
    let to = end
    while (from < to && isBlank(bytes[from])) from++
    while (to > from && isBlank(bytes[to - 1])) to--
    if (from === to) return 'empty'
    if (to - from > longestNumber) return 'damaged'
    if (this.#plain(bytes, from, to)) return 'number'
    return this.#unusual(bytes.subarray(from, to))
  }

  #plain(bytes: Uint8Array, from: number, to: number): boolean {
    let p = bytes[from] === 45 || bytes[from] === 43 ? from + 1 : from
    let high = 0
    let low = 0
    let significant = 0
    let digits = 0
    let power = 0
    let point = -1
    for (; p < to; p++) {
      const digit = bytes[p] - 48
      if (digit >= 0 && digit <= 9) {
        digits++
        if (significant > 0 || digit > 0) significant++
        if (significant <= 9) high = (Math.imul(high, 10) + digit) | 0
        else if (significant <= mostDigits) low = (Math.imul(low, 10) + digit) | 0
      } else if (bytes[p] === this.#decimal && point < 0) point = p
      else break
    }
    if (digits === 0) return false
    if (point >= 0) power = point + 1 - p
    if (p < to) {
      const exponent = readExponent(bytes, p, to)
      if (exponent === undefined) return false
      power += exponent
    }
    const exact =
      significant > mostDigits ? Number.NaN : exactDecimal(high * exactTens[Math.max(0, significant - 9)], low, power)
    const size = Number.isNaN(exact) ? Math.abs(Number(this.#spelled(bytes, from, to))) : exact
    if (!Number.isFinite(size)) return false
    this.value = bytes[from] === 45 ? -size : size
    return true
  }

  /** The same number as the language writes it. */
  #spelled(bytes: Uint8Array, from: number, to: number): string {
    let text = ''
    for (let p = from; p < to; p++) {
      const c = bytes[p]
      text += c === this.#decimal ? '.' : c === 68 || c === 100 ? 'e' : String.fromCharCode(c)
    }
    return text
  }

  /** Thousands marks, then signs and blanks beyond ASCII, then words. */
  #unusual(cell: Uint8Array): CellContent {
    const text = String.fromCharCode(...cell)
    if (wordsForNothing.test(text)) return 'wordForNothing'
    const simple = text.replace(minusSigns, '-').replace(wideBlanks, ' ').replace(apostrophes, "'")
    const plain = Uint8Array.from(this.#withoutGroups(simple), (letter) => letter.charCodeAt(0))
    if (plain.length === cell.length && simple === text) return 'damaged'
    return this.#plain(plain, 0, plain.length) ? 'number' : 'damaged'
  }

  /** The text without the marks between groups of three, where they are right; else as it is. */
  #withoutGroups(text: string): string {
    const found = /^[-+]?\d{1,3}(?:([.,' ])\d{3}(?:\1\d{3})*)(?=$|[^\d])/.exec(text)
    if (found === null) return text
    const mark = found[1].charCodeAt(0)
    const decimalFollows = text.charCodeAt(found[0].length) === this.#decimal
    const believed = mark === this.#thousands || (this.#thousands === 0 && decimalFollows)
    if (mark === this.#decimal || !believed) return text
    return found[0].replaceAll(found[1], '') + text.slice(found[0].length)
  }
}

// The bytes of U+2212 and U+2013 in UTF-8, and U+2013 in Windows-1252.
const minusSigns = /\u00E2\u0088\u0092|\u00E2\u0080\u0093|\u0096/g
// No-break, thin and narrow no-break space in UTF-8, and the first in Windows-1252.
const wideBlanks = /\u00C2\u00A0|\u00E2\u0080[\u0089\u00AF]|\u00A0/g
// U+2019 in UTF-8 and in Windows-1252.
const apostrophes = /\u00E2\u0080\u0099|\u0092/g
const wordsForNothing =
  /^(?:[+-]?nan|[+-]?inf(?:inity)?|-?1[.,]#[a-z]+0*|-+|n\/?a|#n\/a|#num!|#div\/0!|#value!|null|none|\.)$/i

const isBlank = (byte: number): boolean => byte === 32 || byte === 9

/** `e-5`, `E+05`, `d3` from `at` to the very end; undefined if it is not so. */
function readExponent(bytes: Uint8Array, at: number, to: number): number | undefined {
  const letter = bytes[at] | 32
  if (letter !== 101 && letter !== 100) return undefined
  let p = at + 1
  const negative = bytes[p] === 45
  if (negative || bytes[p] === 43) p++
  if (p >= to || to - p > 4) return undefined
  let exponent = 0
  for (; p < to; p++) {
    const digit = bytes[p] - 48
    if (!(digit >= 0 && digit <= 9)) return undefined
    exponent = exponent * 10 + digit
  }
  return negative ? -exponent : exponent
}
