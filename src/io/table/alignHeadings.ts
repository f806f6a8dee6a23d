import { splitCells } from './cells.ts'

/**
 * Headings of a table whose columns are set apart by blanks, one for each of `width` columns. Headings may hold blanks
 * themselves, so two or more blanks are tried first, then single ones, and at last the place above the numbers of `row`.
 */
export function alignHeadings(text: string, row: string, width: number): readonly string[] {
  const wide = text
    .trim()
    .split(/\t+| {2,}/)
    .map(unquoted)
  if (wide.length === width) return wide
  const single = splitCells(text, ' ')
  if (single.length === width) return single
  const joined = text.trim().match(/"[^"]*"|\S+(?: ?[[({][^\])}]*[\])}])?/g) ?? []
  if (joined.length === width) return joined.map(unquoted)
  return byPlace(text, row, width)
}

const unquoted = (cell: string): string => cell.trim().replace(/^"(.*)"$/, '$1')

interface Span {
  readonly from: number
  readonly to: number
  readonly text: string
}

const spans = (line: string): Span[] =>
  [...line.matchAll(/[^\s]+/g)].map(({ index, 0: text }) => ({ from: index, to: index + text.length, text }))

/** Gives each word of the headings to the column of numbers that it stands nearest to. */
function byPlace(text: string, row: string, width: number): readonly string[] {
  const columns = spans(row).slice(0, width)
  const headings: string[] = Array.from({ length: width }, () => '')
  if (columns.length === 0) return headings
  for (const word of spans(text)) {
    let best = 0
    for (let column = 1; column < columns.length; column++) {
      if (distance(word, columns[column]) < distance(word, columns[best])) best = column
    }
    headings[best] = `${headings[best]} ${word.text}`.trim()
  }
  return headings
}

/** Blanks between two spans; below zero where they overlap. */
const distance = (a: Span, b: Span): number => Math.max(a.from, b.from) - Math.min(a.to, b.to)
