import { splitCells } from './cells.ts'
import type { Encoding } from './encoding.ts'
import { headLines } from './headLines.ts'
import type { ColumnGuess } from './rawRecord.ts'
import type { TableLook } from './tableLook.ts'
import type { TextHead } from './textHead.ts'

/** Rows that a person looks at to see whether the columns are right. */
const mostRows = 30

/** Longest cell that is shown. */
const mostLetters = 200

/** Looks at the first rows below a head. */
export function lookAtTable(text: TextHead, guesses: readonly ColumnGuess[], encoding: Encoding): TableLook {
  const { shape, head, begun, mostRows: all } = text
  const lines = headLines(begun, encoding, all !== undefined)
  const rows = Array.from({ length: Math.min(mostRows, lines.count) }, (_, line) =>
    splitCells(lines.text(line), shape.separator).map((cell) => cell.slice(0, mostLetters)),
  )
  return {
    headings: head.columns.map(({ heading }) => heading),
    guesses,
    rows,
    firstLine: head.firstRow + 1,
    preamble: head.preamble,
  }
}
