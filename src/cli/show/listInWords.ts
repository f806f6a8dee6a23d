import type { HistoryEntry, Listed, ListedRecord, Titled } from '../../bench/lab/index.ts'
import { shortId } from './addInWords.ts'
import { printable } from './printable.ts'
import { type TableColumn, textTable } from './textTable.ts'

/** The records of a lab as a table. */
export function recordsInWords({ title, where, records }: Listed): string {
  const head = `${printable(title)} · ${where} · ${records.length} ${records.length === 1 ? 'record' : 'records'}`
  return records.length === 0 ? `${head}\n` : `${head}\n\n${recordTable(records)}\n`
}

/** Records with what people say about them and what was made of them; columns that nobody filled are left out. */
export function recordTable(records: readonly ListedRecord[]): string {
  const cells = (of: (one: ListedRecord) => string | number | null): string[] =>
    records.map((one) => printable(String(of(one) ?? ''), 40))
  const columns: readonly TableColumn[] = [
    column(
      'id',
      cells(({ record }) => shortId(record.id)),
    ),
    column(
      'file',
      cells(({ record }) => record.name),
    ),
    column(
      'study',
      cells(({ record }) => record.study),
    ),
    column(
      'sample',
      cells(({ record }) => record.sample),
    ),
    {
      ...column(
        'replicate',
        cells(({ record }) => record.replicate),
      ),
      align: 'right',
    },
    column(
      'measured',
      cells(({ record }) => record.day),
    ),
    column(
      'added',
      cells(({ record }) => `${record.added.at.slice(0, 10)} ${record.added.who}`),
    ),
    {
      ...column(
        'version',
        cells(({ record }) => record.version),
      ),
      align: 'right',
    },
    column(
      'result',
      cells(({ result }) => result?.origin.program ?? 'none'),
    ),
  ]
  return textTable(columns.filter((one) => one.cells.some((cell) => cell !== '')))
}

const column = (head: string, cells: readonly string[]): TableColumn => ({ head, unit: '', align: 'left', cells })

/** Studies or samples as a table. */
export function titledInWords(kind: 'studies' | 'samples', things: readonly Titled[], listed: Listed): string {
  if (things.length === 0)
    return `No ${kind} yet; "kufe add … --${kind === 'studies' ? 'study' : 'sample'} NAME" makes one.\n`
  const key = kind === 'studies' ? 'study' : 'sample'
  const count = (id: string): string => String(listed.records.filter(({ record }) => record[key] === id).length)
  return `${textTable([
    column(
      'id',
      things.map(({ id }) => id),
    ),
    column(
      'title',
      things.map(({ title }) => printable(title, 60)),
    ),
    {
      ...column(
        'records',
        things.map(({ id }) => count(id)),
      ),
      align: 'right',
    },
  ])}\n`
}

/** The history as a table, oldest first. */
export function historyInWords(entries: readonly HistoryEntry[]): string {
  const cells = (of: (entry: HistoryEntry) => string): string[] => entries.map((entry) => printable(of(entry), 60))
  return `${textTable([
    {
      ...column(
        'number',
        cells(({ change }) => String(change.number)),
      ),
      align: 'right',
    },
    column(
      'when',
      cells(({ change }) => instantInWords(change.at)),
    ),
    column(
      'who',
      cells(({ change }) => change.who),
    ),
    column('what', cells(whatInWords)),
    column(
      'why',
      cells(({ change }) => change.why),
    ),
  ])}\n`
}

const whatInWords = ({ what, kind, id, version }: HistoryEntry): string =>
  `${what} ${kind} ${id.replace(/[0-9a-f]{64}/, shortId)}${version === null || version === 1 ? '' : `, version ${version}`}`

/** UTC to the second. */
export const instantInWords = (at: string): string => `${at.slice(0, 10)} ${at.slice(11, 19)} UTC`
