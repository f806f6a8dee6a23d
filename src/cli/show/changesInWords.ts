import type { Difference, Finding } from '../../bench/lab/index.ts'
import { shortId } from './addInWords.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'

export type ChangedFinding = Finding & { readonly what: 'differs' | 'changed' }

/** Records and fields that are named; --json has all of them. */
const mostNames = 6
const mostFields = 10

/** Which records changed, and each field over all of them: in how many, by how much at most, and where. */
export function changesInWords(findings: readonly ChangedFinding[]): string {
  const names = findings.map(({ record }) => `${printable(record.name, 40)} (${shortId(record.id)})`)
  const more = names.length > mostNames ? ` and ${names.length - mostNames} more` : ''
  const fields = fieldsOf(findings)
  if (fields.length === 0)
    return `    ${names.slice(0, mostNames).join(', ')}${more}\n    The values are the same and are written otherwise.`
  const told = fields.slice(0, mostFields)
  const left = fields.length - told.length
  return [
    `    ${names.slice(0, mostNames).join(', ')}${more}`,
    `    ${frictionInWords(fields)}`,
    tableOf(told),
    ...(left > 0 ? [`    and ${left} more ${left === 1 ? 'field' : 'fields'}; --json names all of them`] : []),
  ].join('\n')
}

/** A field in all findings, with the one in which it changed most. */
interface FieldChange {
  readonly worst: Difference
  readonly file: string
  readonly records: number
}

function fieldsOf(findings: readonly ChangedFinding[]): FieldChange[] {
  const fields = new Map<string, FieldChange>()
  for (const { record, differences } of findings) {
    for (const one of differences) {
      const known = fields.get(one.field)
      const worse = known === undefined || size(one) > size(known.worst)
      const { worst, file } = worse ? { worst: one, file: record.name } : known
      fields.set(one.field, { worst, file, records: (known?.records ?? 0) + 1 })
    }
  }
  return [...fields.values()].sort((a, b) => rank(a.worst) - rank(b.worst))
}

const size = ({ largest }: Difference): number => largest ?? Number.POSITIVE_INFINITY

const friction = 'points[].friction'

/** What people look at first. */
const firstFields = [
  /^points\[\]\.friction$/,
  /^points\[\]\.(low|high)$/,
  /^curve\.features/,
  /^window\./,
  /^points/,
  /^curve/,
]

function rank({ field }: Difference): number {
  const at = firstFields.findIndex((pattern) => pattern.test(field))
  return at < 0 ? firstFields.length : at
}

function frictionInWords(fields: readonly FieldChange[]): string {
  const changed = fields.find(({ worst }) => worst.field === friction)
  if (changed === undefined) return 'No friction value changed.'
  return changed.worst.largest === null
    ? 'Friction values came or went.'
    : `Friction values changed by at most ${percent(changed.worst.largest)}.`
}

function tableOf(fields: readonly FieldChange[]): string {
  const column = (head: string, cells: readonly string[]) => ({ head, unit: '', align: 'left', cells }) as const
  return textTable(
    [
      column(
        'field',
        fields.map(({ worst }) => worst.field),
      ),
      {
        ...column(
          'records',
          fields.map(({ records }) => String(records)),
        ),
        align: 'right',
      },
      column(
        'most',
        fields.map(({ worst }) => (worst.largest === null ? '' : percent(worst.largest))),
      ),
      column(
        'there',
        fields.map(
          ({ worst, file }) => `${valueInWords(worst.before)} → ${valueInWords(worst.after)}, ${printable(file, 30)}`,
        ),
      ),
    ],
    4,
  )
}

const percent = (share: number): string =>
  Number.isFinite(share) ? `${Number((100 * share).toPrecision(2))} %` : 'from zero'

function valueInWords(value: Difference['before']): string {
  if (value === undefined) return 'nothing'
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : printable(JSON.stringify(value), 40)
}
