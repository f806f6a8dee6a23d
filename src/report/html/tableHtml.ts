import type { ReportColumn, ReportTable } from '../reportContent.ts'
import { isWide } from '../words/isWide.ts'
import { linedUp } from '../words/linedUp.ts'
import { escapeHtml } from './escapeHtml.ts'

/** A table with its caption above, its units in a row of their own, and its notes below. */
export function tableHtml(table: ReportTable): string {
  const { number, caption, columns, rows, notes } = table
  const heads = `<tr>${columns.map((column) => headCell(column, column.head)).join('')}</tr>`
  const units = columns.some(({ unit }) => unit !== '')
    ? `<tr class="units">${columns.map((column) => unitCell(column)).join('')}</tr>`
    : ''
  const aligned = linedUp(columns, rows)
  const body = aligned.map((cells) => `<tr>${cells.map((cell, i) => bodyCell(columns[i], cell)).join('')}</tr>`)
  const below = notes.map((note) => `<p class="note">${escapeHtml(note)}</p>`).join('')
  return `<div class="table${isWide(table) ? ' wide' : ''}">
<table>
<caption><b>Table ${number}.</b> ${escapeHtml(caption)}</caption>
<thead>${heads}${units}</thead>
<tbody>
${body.join('\n')}
</tbody>
</table>
${below}</div>`
}

const side = ({ align }: ReportColumn): string => (align === 'left' ? '' : ' class="right"')

const headCell = (column: ReportColumn, text: string): string =>
  `<th scope="col"${side(column)}>${escapeHtml(text)}</th>`

const unitCell = (column: ReportColumn): string => `<td${side(column)}>${escapeHtml(column.unit)}</td>`

const bodyCell = (column: ReportColumn, text: string): string => `<td${side(column)}>${escapeHtml(text)}</td>`
