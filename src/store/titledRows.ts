import { canonicalJson } from './canonicalJson.ts'
import { type Change, checkedChange } from './change.ts'
import { note } from './history.ts'
import { checkedIdentifier } from './identifier.ts'
import { notThere } from './notThere.ts'
import { plainText } from './plainText.ts'
import type { Reading, TitledRow, Writing } from './schema/tables.ts'
import { refuse } from './storeProblem.ts'
import type { NewTitled, Titled, TitledKind, Titles } from './titled.ts'

// The tables of the three kinds are alike, so queries are typed by one of them and run on the others.

const identities = { lab: 'labs' as 'studies', study: 'studies', sample: 'samples' as 'studies' } as const
const versions = {
  lab: 'lab_versions' as 'study_versions',
  study: 'study_versions',
  sample: 'sample_versions' as 'study_versions',
} as const

/** Adds the first version of one; refuses an id that is taken. */
export async function addTitled(
  writing: Writing,
  { kind, thing, change }: { readonly kind: TitledKind; readonly thing: NewTitled; readonly change: Change },
): Promise<void> {
  const id = checkedIdentifier(thing.id, kind)
  if (await isThere(writing, kind, id)) {
    refuse('alreadyThere', {
      place: { name: `${kind} id`, cell: id },
      what: `There is a ${kind} "${id}" already.`,
      mend: 'Choose another id, or correct the one that is there.',
    })
  }
  const { title, note = '', facts = {} } = thing
  await putTitled(writing, { kind, id, version: 1, titles: { title, note, facts }, change })
}

/** Whether there is one of this id. */
export async function isThere(on: Reading, kind: TitledKind, id: string): Promise<boolean> {
  return (await on.selectFrom(identities[kind]).select('id').where('id', '=', id).executeTakeFirst()) !== undefined
}

interface NewVersion {
  readonly kind: TitledKind
  readonly id: string
  readonly version: number
  readonly titles: Titles
  readonly change: Change
}

/** Puts a version in, with its line in the history. */
export async function putTitled(
  writing: Writing,
  { kind, id, version, titles, change: said }: NewVersion,
): Promise<void> {
  const what = version === 1 ? 'created' : 'corrected'
  const [change] = await note(writing, checkedChange(said, what), [{ what, kind, id, version }])
  if (version === 1) await writing.insertInto(identities[kind]).values({ id, change }).execute()
  const row: TitledRow = {
    id,
    version,
    supersedes: version === 1 ? null : version - 1,
    title: plainText(titles.title, 'title'),
    note: plainText(titles.note, 'note'),
    facts: plainText(canonicalJson(titles.facts), 'facts'),
    change,
  }
  await writing.insertInto(versions[kind]).values(row).execute()
}

function keptFacts(kind: TitledKind, id: string, text: string): Titled['facts'] {
  try {
    return JSON.parse(text)
  } catch {
    return refuse('labDamaged', {
      place: { name: kind, cell: id },
      what: `What is noted of the ${kind} ${id} is not what was kept.`,
      mend: 'Restore the lab from a backup into a new place, and find out who changed it.',
    })
  }
}

/** The latest version; refuses an id that is not there. */
export async function latestTitled(on: Reading, kind: TitledKind, id: string): Promise<Titled> {
  const [found] = await titledVersions(on, kind, { id, latest: true })
  return found ?? notThere(kind, id)
}

/** Versions in order of id and version, each with the change that made it. */
export async function titledVersions(
  on: Reading,
  kind: TitledKind,
  { id, latest = false }: { readonly id?: string; readonly latest?: boolean },
): Promise<Titled[]> {
  let query = on
    .selectFrom(`${versions[kind]} as v`)
    .innerJoin('history as h', 'h.seq', 'v.change')
    .select(['v.id', 'v.version', 'v.supersedes', 'v.title', 'v.note', 'v.facts', 'h.seq', 'h.at', 'h.who', 'h.why'])
    .orderBy('v.id')
    .orderBy('v.version')
  if (id !== undefined) query = query.where('v.id', '=', id)
  if (latest) {
    query = query.where(({ not, exists, selectFrom }) => {
      const next = selectFrom(`${versions[kind]} as next`).select('next.id').whereRef('next.id', '=', 'v.id')
      return not(exists(next.whereRef('next.supersedes', '=', 'v.version')))
    })
  }
  return (await query.execute()).map(({ seq, at, who, why, facts, ...row }) => ({
    ...row,
    facts: keptFacts(kind, row.id, facts),
    change: { number: seq, at, who, why },
  }))
}
