import { splitCells } from './cells.ts'
import { decodeText, type Encoding } from './encoding.ts'
import type { Separator } from './rawRecord.ts'

/** What a line is that does not read as a row of the table. */
export type OddLine =
  | { readonly kind: 'blank' | 'headings' | 'units' }
  /** A line such as "Step 4" above the rows of a step; `number` where it has one. */
  | { readonly kind: 'section'; readonly number: number | undefined }
  /** Headings again, but others or in another order. */
  | { readonly kind: 'otherHeadings'; readonly cells: readonly string[] }
  /** Words, at most two cells of them: a comment if headings follow, damage if not. */
  | { readonly kind: 'words'; readonly cells: readonly string[] }
  | { readonly kind: 'damaged'; readonly cells: readonly string[] }

/** What is known of the table's head, to tell its return from damage. */
export interface KnownHead {
  readonly encoding: Encoding
  readonly separator: Separator
  /** Headings and units as cells of their lines; empty where the table has none. */
  readonly headings: readonly string[]
  readonly units: readonly string[]
}

/** Words that begin a section of a record, English and German. */
const sectionWords = /^\W*(?:step|segment|section|interval|stage|schritt|abschnitt|intervall|stufe)\b\D*(\d{1,6})?\D*$/i

/** More than this of a line is not looked at. */
const longestLook = 65_536

export function sectionNumber(text: string): { readonly number: number | undefined } | undefined {
  const found = text.length > 200 ? null : sectionWords.exec(text)
  return found === null ? undefined : { number: found[1] === undefined ? undefined : Number(found[1]) }
}

export function judgeOddLine(bytes: Uint8Array, head: KnownHead): OddLine {
  const text = decodeText(bytes.subarray(0, longestLook), head.encoding)
  const cells = splitCells(text, head.separator)
  while (cells.length > 0 && cells[cells.length - 1] === '') cells.pop()
  const filled = cells.filter((cell) => cell !== '')
  if (filled.length === 0) return { kind: 'blank' }
  if (isSame(cells, head.headings)) return { kind: 'headings' }
  if (isSame(cells, head.units)) return { kind: 'units' }
  const section = filled.length <= 2 ? sectionNumber(filled.join(' ')) : undefined
  if (section !== undefined) return { kind: 'section', number: section.number }
  const known = filled.filter((cell) => head.headings.includes(cell)).length
  if (known >= 2 && known * 2 >= filled.length) return { kind: 'otherHeadings', cells }
  if (filled.length <= 2 && !/^[-+]?\d/.test(filled[0])) return { kind: 'words', cells }
  return { kind: 'damaged', cells }
}

const isSame = (cells: readonly string[], known: readonly string[]): boolean =>
  known.length > 0 && cells.length === known.length && cells.every((cell, index) => cell === known[index])
