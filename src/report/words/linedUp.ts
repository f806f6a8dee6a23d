import type { ReportColumn } from '../reportContent.ts'

/** As wide as a digit where figures are tabular. */
const digitSpace = '\u2007'
/** About as wide as a point. */
const pointSpace = '\u2009'

/**
 * Cells whose numbers stand with their points below each other when they are set flush right in tabular figures: what a cell
 * lacks behind its point is filled with blanks of that width.
 */
export function linedUp(
  columns: readonly ReportColumn[],
  rows: readonly (readonly string[])[],
): readonly (readonly string[])[] {
  const tails = columns.map(({ align }, i) =>
    align === 'point' ? Math.max(0, ...rows.map((row) => tailOf(row[i]))) : 0,
  )
  return rows.map((row) => row.map((cell, i) => (tails[i] > 0 ? filled(cell, tails[i]) : cell)))
}

/** Letters behind the first point; 0 without one. */
const tailOf = (cell: string): number => {
  const point = cell.indexOf('.')
  return point < 0 ? 0 : cell.length - point - 1
}

function filled(cell: string, tail: number): string {
  if (cell === '' || !/\d/.test(cell)) return cell
  const missing = tail - tailOf(cell)
  return cell.includes('.') ? cell + digitSpace.repeat(missing) : cell + pointSpace + digitSpace.repeat(missing)
}
