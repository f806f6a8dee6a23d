import type { ReducedRecord } from '../../bench/index.ts'
import { printable } from './printable.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** What each column of the file was taken for, and why; long reasons run over several lines. */
export function columnTable({ read }: ReducedRecord, width: number): string {
  const rows = read.columns.map(({ heading, column, unit, channel }) => [
    printable(heading, 28) || `number ${column}`,
    printable(unit, 12),
    channel ?? 'nothing',
  ])
  const taken = Math.max(
    ...textTable(columnsOf(rows))
      .split('\n')
      .map((line) => [...line].length),
  )
  const room = Math.max(24, width - taken - 2)
  const lines = read.columns.flatMap(({ reason }, index) =>
    wrap(printable(reason, 200), room)
      .split('\n')
      .map((line, at) => [...(at === 0 ? (rows[index] ?? []) : ['', '', '']), line]),
  )
  return textTable(columnsOf(lines))
}

function columnsOf(rows: readonly (readonly string[])[]): readonly TableColumn[] {
  const heads = ['column', 'unit', 'taken for', 'because'].slice(0, rows[0]?.length ?? 0)
  return heads.map((head, at) => ({ head, unit: '', align: 'left', cells: rows.map((row) => row[at] ?? '') }))
}
