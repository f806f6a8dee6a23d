import { sql } from 'kysely'
import { checksum } from './checksum.ts'
import { checkedIdentifier } from './identifier.ts'
import { notThere } from './notThere.ts'
import {
  type NamedPlace,
  type Paper,
  type PaperKind,
  type PaperPlace,
  type PaperSubject,
  paperId,
  paperKinds,
} from './papers.ts'
import type { PaperRow, Reading } from './schema/tables.ts'
import { refuse } from './storeProblem.ts'
import { isThere } from './titledRows.ts'

/** The place with its name looked at. Throws RangeError for a kind that is not about such a subject. */
export function paperPlace({ subject, subjectId, kind, name = '' }: NamedPlace): PaperPlace {
  const subjects: readonly PaperSubject[] | undefined = paperKinds[kind]
  if (!subjects?.includes(subject)) throw new RangeError(`a paper of the kind ${kind} is not about a ${subject}`)
  if (subject === 'lab' && subjectId !== 'lab') throw new RangeError(`the lab is called lab here, got ${subjectId}`)
  if (subject === 'lab' || name !== '') checkedIdentifier(name, kind)
  return { subject, subjectId, kind, name }
}

/** Refuses a paper about something that the lab does not have. */
export async function checkSubject(on: Reading, { subject, subjectId }: PaperPlace): Promise<void> {
  if (subject === 'study' && !(await isThere(on, 'study', subjectId))) notThere('study', subjectId)
  if (subject !== 'record') return
  const row = await on.selectFrom('raw').select('sha256').where('sha256', '=', subjectId).executeTakeFirst()
  if (row === undefined) notThere('record', subjectId)
}

/** The row of a version; `text` is its content as canonical JSON. */
export function paperRow(
  place: PaperPlace,
  { version, text, change }: { readonly version: number; readonly text: string; readonly change: number },
): PaperRow {
  return {
    subject: place.subject,
    subject_id: place.subjectId,
    kind: place.kind,
    name: place.name,
    version,
    supersedes: version === 1 ? null : version - 1,
    content: text,
    sha256: checksum(text),
    change,
  }
}

interface Wanted {
  readonly subject: PaperSubject
  readonly subjectId: string
  readonly kind?: PaperKind
  readonly name?: string
  readonly version?: number
  readonly latest?: boolean
}

/** Versions in order of kind, name and version, each with the change that made it. */
export async function paperVersions(on: Reading, wanted: Wanted): Promise<Paper[]> {
  const { subject, subjectId, kind, name, version, latest = false } = wanted
  let query = on
    .selectFrom('paper_versions as p')
    .innerJoin('history as h', 'h.seq', 'p.change')
    .selectAll('p')
    .select(['h.at', 'h.who', 'h.why'])
    .where('p.subject', '=', subject)
    .where('p.subject_id', '=', subjectId)
    .orderBy('p.kind')
    .orderBy('p.name')
    .orderBy('p.version')
  if (kind !== undefined) query = query.where('p.kind', '=', kind)
  if (name !== undefined) query = query.where('p.name', '=', name)
  if (version !== undefined) query = query.where('p.version', '=', version)
  if (latest) query = query.where(isLatest)
  return (await query.execute()).map(paperOf)
}

const isLatest = sql<boolean>`not exists (select 1 from paper_versions as next
  where next.subject = p.subject and next.subject_id = p.subject_id and next.kind = p.kind and next.name = p.name
    and next.supersedes = p.version)`

function paperOf({
  at,
  who,
  why,
  subject_id,
  content,
  ...row
}: PaperRow & Record<'at' | 'who' | 'why', string>): Paper {
  const place = {
    subject: row.subject as PaperSubject, // written by `paperRow` alone, as is the kind
    subjectId: subject_id,
    kind: row.kind as PaperKind,
    name: row.name,
  }
  if (checksum(content) !== row.sha256) refuse('paperChanged', paperChanged(paperId(place)))
  return {
    ...place,
    version: row.version,
    supersedes: row.supersedes,
    content: JSON.parse(content),
    sha256: row.sha256,
    change: { number: row.change, at, who, why },
  }
}

/** Words for a paper whose content is not the one that was kept. */
export const paperChanged = (id: string) => ({
  place: { name: 'paper', cell: id },
  what: `The paper ${id} is not the one that was kept.`,
  mend: 'Restore the lab from a backup into a new place, and find out who changed it.',
})
