import type { KeptRecord, KeptResult, Shown, ShownGroup, ShownRecord } from '../../bench/lab/index.ts'
import { painted, type Screen } from '../screen.ts'
import { shortId } from './addInWords.ts'
import { instantInWords, recordTable } from './listInWords.ts'
import { printable } from './printable.ts'
import { reductionInWords } from './reductionInWords.ts'
import { textTable } from './textTable.ts'

/** A record, a study or a sample as it is kept. */
export const thingInWords = (shown: Shown, screen: Screen): string =>
  shown.kind === 'record' ? recordInWords(shown, screen) : groupInWords(shown, screen)

function recordInWords({ record, versions, results, current, read }: ShownRecord, screen: Screen): string {
  const title = (text: string): string => painted(screen, text, 'strong')
  const sections = [
    `${title('Record')}\n${factsInWords(record)}`,
    `${title('History')}\n${versionTable(versions)}`,
    `${title('Results')}\n${resultTable(results, current)}`,
    read === undefined ? '  None with this setup; add the file again, or: kufe amend ID --setup FILE --why "…".' : '',
  ]
  const head = sections.filter((section) => section !== '').join('\n\n')
  return read === undefined ? `${head}\n` : `${head}\n\n${reductionInWords(read.reduced, screen)}`
}

function factsInWords(record: KeptRecord): string {
  const facts: readonly (readonly [string, string | number | null])[] = [
    ['id', record.id],
    ['file', `${printable(record.name)}, ${record.size.toLocaleString('en')} bytes`],
    ['study', record.study],
    ['sample', record.sample],
    ['replicate', record.replicate],
    ['measured', record.day],
    ['mounted by', record.mountedBy],
    ['ball set', record.ballSet],
    ['setup', record.setup],
  ]
  return facts
    .filter(([, value]) => value !== null)
    .map(([name, value]) => `  ${name.padEnd(11)} ${printable(String(value))}`)
    .join('\n')
}

/** Facts that a correction may change, by the names that people read. */
const facts = [
  ['name', 'file'],
  ['study', 'study'],
  ['sample', 'sample'],
  ['replicate', 'replicate'],
  ['day', 'measured'],
  ['mountedBy', 'mounted by'],
  ['ballSet', 'ball set'],
  ['setup', 'setup'],
] as const satisfies readonly (readonly [keyof KeptRecord, string])[]

function versionTable(versions: readonly KeptRecord[]): string {
  const changes = versions.map((version, i) => factChangesInWords(versions[i - 1], version))
  return textTable([
    { head: 'version', unit: '', align: 'right', cells: versions.map(({ version }) => String(version)) },
    { head: 'when', unit: '', align: 'left', cells: versions.map(({ change }) => instantInWords(change.at)) },
    { head: 'who', unit: '', align: 'left', cells: versions.map(({ change }) => printable(change.who, 20)) },
    { head: 'what', unit: '', align: 'left', cells: changes },
    { head: 'why', unit: '', align: 'left', cells: versions.map(({ change }) => printable(change.why, 60)) },
  ])
}

/** What a version has that the one before had not. */
export function factChangesInWords(before: KeptRecord | undefined, after: KeptRecord): string {
  if (before === undefined) return 'added'
  const changed = facts.filter(([key]) => before[key] !== after[key])
  return changed.map(([key, words]) => `${words} ${factInWords(before[key])} → ${factInWords(after[key])}`).join(', ')
}

const factInWords = (fact: string | number | null): string =>
  fact === null ? 'none' : printable(/^[0-9a-f]{64}$/.test(String(fact)) ? shortId(String(fact)) : String(fact), 40)

function resultTable(results: readonly KeptResult[], current: KeptResult | undefined): string {
  if (results.length === 0) return '  None yet.'
  return textTable([
    { head: '', unit: '', align: 'left', cells: results.map(({ id }) => (id === current?.id ? 'counts' : '')) },
    { head: 'when', unit: '', align: 'left', cells: results.map(({ change }) => instantInWords(change.at)) },
    { head: 'who', unit: '', align: 'left', cells: results.map(({ change }) => printable(change.who, 20)) },
    { head: 'by', unit: '', align: 'left', cells: results.map(({ origin }) => printable(origin.program, 30)) },
    { head: 'setup', unit: '', align: 'left', cells: results.map(({ origin }) => shortId(origin.setup)) },
    { head: 'seed', unit: '', align: 'right', cells: results.map(({ origin }) => String(origin.seed)) },
    { head: 'SHA-256 of the result', unit: '', align: 'left', cells: results.map(({ sha256 }) => shortId(sha256)) },
  ])
}

function groupInWords({ kind, group, versions, records }: ShownGroup, screen: Screen): string {
  const { id, title, note, change } = group
  const head = `${painted(screen, printable(title), 'accent')} · ${kind} ${id}`
  const made = versions[0]?.change ?? change
  const lines = [
    head,
    ...(note === '' ? [] : [`  ${printable(note, 400)}`]),
    `  made ${instantInWords(made.at)} by ${printable(made.who)}${versions.length > 1 ? `, version ${versions.length} since ${instantInWords(change.at)}` : ''}`,
  ]
  return `${lines.join('\n')}\n\n${records.length === 0 ? '  No records.' : recordTable(records)}\n`
}
