import { exactDecimal } from './exactDecimal.ts'

/**
 * Bytes that have a meaning inside a number. `thousands` is 0 where no such mark was seen so far; then one is believed
 * only in a number that has a decimal mark as well (1.234,5), because 1,234 alone may be a misplaced decimal.
 */
export interface NumberMarks {
  readonly decimal: number
  readonly thousands: number
}

/** What a cell held: a number, nothing (or a word for nothing), or something that is no number. */
export type CellContent = 'number' | 'empty' | 'wordForNothing' | 'damaged'

/** Longest text that may be one number; anything longer is damage, whatever it holds. */
const longestNumber = 400

/**
 * Reads one cell of any shape: signs, thousands marks, up to 19 digits exactly and more through `Number()`,
 * exponents, words for "nothing". Slower than the short way in `cellReader.ts`, and complete.
 */
export class NumberBytes {
  value = Number.NaN
  readonly #marks: NumberMarks
  #leading = 0
  #trailing = 0
  #digits = 0
  #trailingDigits = 0
  /** Thousands mark of the cell at hand. */
  #mark = 0

  constructor(marks: NumberMarks) {
    this.#marks = marks
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
    return this.#unusual(bytes, from, to)
  }

  #plain(bytes: Uint8Array, from: number, to: number): boolean {
    const signed = bytes[from] === 45 || bytes[from] === 43
    const first = signed ? from + 1 : from
    this.#leading = 0
    this.#trailing = 0
    this.#digits = 0
    this.#trailingDigits = 0
    this.#mark = this.#marks.thousands
    let p = this.#wholePart(bytes, first, to)
    if (p < 0) return false
    const hasWhole = p > first
    const hasDecimal = p < to && bytes[p] === this.#marks.decimal
    let power = 0
    if (hasDecimal) {
      const fraction = ++p
      while (p < to && isDigit(bytes[p])) this.#add(bytes[p++] - 48)
      power = fraction - p
    }
    if (!hasWhole && power === 0) return false
    if (this.#mark !== this.#marks.thousands && !hasDecimal) return false
    if (p < to) {
      const exponent = readExponent(bytes, p, to)
      if (exponent === undefined) return false
      power += exponent
    }
    const exact = this.#digits > 19 ? undefined : this.#exact(power)
    const size = exact ?? Math.abs(Number(this.#spelled(bytes, from, to)))
    if (!Number.isFinite(size)) return false
    this.value = bytes[from] === 45 ? -size : size
    return true
  }

  /** Digits before the decimal mark, perhaps in groups of three with a mark between; −1 for other groups. */
  #wholePart(bytes: Uint8Array, from: number, to: number): number {
    let group = 0
    let groups = 0
    let p = from
    for (; p < to; p++) {
      const c = bytes[p]
      if (isDigit(c)) {
        this.#add(c - 48)
        group++
        continue
      }
      if (this.#mark === 0 && c !== this.#marks.decimal && thousandsMarks.includes(c)) this.#mark = c
      if (c !== this.#mark || group === 0) break
      if (groups === 0 ? group > 3 : group !== 3) return -1
      groups++
      group = 0
    }
    return groups > 0 && group !== 3 ? -1 : p
  }

  #add(digit: number): void {
    if (this.#digits === 0 && digit === 0) return
    this.#digits++
    if (this.#digits <= 15) this.#leading = this.#leading * 10 + digit
    else if (this.#digits <= 19) {
      this.#trailing = this.#trailing * 10 + digit
      this.#trailingDigits++
    }
  }

  #exact(power: number): number | undefined {
    if (this.#digits === 0) return 0
    return exactDecimal({
      leading: this.#leading,
      trailing: this.#trailing,
      trailingDigits: this.#trailingDigits,
      power,
    })
  }

  /** The same number as the language writes it. */
  #spelled(bytes: Uint8Array, from: number, to: number): string {
    let text = ''
    for (let p = from; p < to; p++) {
      const c = bytes[p]
      if (c === this.#marks.decimal) text += '.'
      else if (c === 68 || c === 100) text += 'e'
      else if (c !== this.#mark) text += String.fromCharCode(c)
    }
    return text
  }

  /** Signs and blanks beyond ASCII, then words. */
  #unusual(bytes: Uint8Array, from: number, to: number): CellContent {
    let text = ''
    let beyond = false
    for (let p = from; p < to; p++) {
      text += String.fromCharCode(bytes[p])
      beyond ||= bytes[p] > 127
    }
    if (!beyond) return wordsForNothing.test(text) ? 'wordForNothing' : 'damaged'
    const simple = text.replace(minusSigns, '-').replace(blankMarks, this.#marks.thousands > 127 ? ' ' : '')
    if (wordsForNothing.test(simple)) return 'wordForNothing'
    const plain = Uint8Array.from(simple, (letter) => letter.charCodeAt(0))
    const marks = { decimal: this.#marks.decimal, thousands: this.#marks.thousands > 127 ? 32 : this.#marks.thousands }
    if (plain.some((byte) => byte > 127)) return 'damaged'
    const inner = new NumberBytes(marks)
    if (!inner.#plain(plain, 0, plain.length)) return 'damaged'
    this.value = inner.value
    return 'number'
  }
}

// The bytes of U+2212 and U+2013 in UTF-8, and U+2013 in Windows-1252.
const minusSigns = /\u00E2\u0088\u0092|\u00E2\u0080\u0093|\u0096/g
// No-break, thin and narrow no-break space in UTF-8, and the first in Windows-1252.
const blankMarks = /\u00C2\u00A0|\u00E2\u0080[\u0089\u00AF]|\u00A0/g
const wordsForNothing =
  /^(?:[+-]?nan|[+-]?inf(?:inity)?|-?1[.,]#[a-z]+(?:0*)?|-+|n\/?a|#n\/a|#num!|#div\/0!|#value!|null|none|\.)$/i

/** Point, comma, blank, apostrophe. */
const thousandsMarks: readonly number[] = [46, 44, 32, 39]

const isDigit = (byte: number): boolean => byte >= 48 && byte <= 57
const isBlank = (byte: number): boolean => byte === 32 || byte === 9

/** `e-5`, `E+05`, `d3` from `p` to the very end; undefined if it is not so. */
function readExponent(bytes: Uint8Array, at: number, to: number): number | undefined {
  const letter = bytes[at] | 32
  if (letter !== 101 && letter !== 100) return undefined
  let p = at + 1
  const negative = bytes[p] === 45
  if (negative || bytes[p] === 43) p++
  if (p >= to || to - p > 4) return undefined
  let exponent = 0
  for (; p < to; p++) {
    if (!isDigit(bytes[p])) return undefined
    exponent = exponent * 10 + bytes[p] - 48
  }
  return negative ? -exponent : exponent
}
