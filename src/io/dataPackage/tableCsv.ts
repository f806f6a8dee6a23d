import { cellOf, type DataColumn } from './dataTable.ts'
import { defused } from './defused.ts'

/**
 * A table as CSV (RFC 4180, UTF-8): a row of names, a row of units, one row each. Numbers are written in full and read back to
 * the same double; texts are quoted where they must be, and none is run as a formula.
 */
export function tableCsv<Row>(columns: readonly DataColumn<Row>[], rows: readonly Row[]): string {
  const lines = [
    columns.map(({ name }) => quoted(name)),
    columns.map(({ unit }) => quoted(unit)),
    ...rows.map((row) => columns.map((column) => cellText(column, row))),
  ]
  return lines.map((line) => `${line.join(',')}\r\n`).join('')
}

function cellText<Row>(column: DataColumn<Row>, row: Row): string {
  const cell = cellOf(column, row)
  if (cell === null) return ''
  return typeof cell === 'string' ? quoted(defused(cell.toWellFormed())) : String(cell)
}

const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
