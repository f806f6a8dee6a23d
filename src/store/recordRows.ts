import { sql } from 'kysely'
import type { Sha256 } from '../core/terms/index.ts'
import { checkedDay } from './identifier.ts'
import { notThere } from './notThere.ts'
import { plainText, plainTextOrNull } from './plainText.ts'
import type { KeptRecord, RecordFacts, RecordFilter } from './records.ts'
import type { Reading, RecordRow, Writing } from './schema/tables.ts'
import { refuse } from './storeProblem.ts'
import { isThere } from './titledRows.ts'

interface Wanted extends RecordFilter {
  readonly ids?: readonly Sha256[]
  /** Ids from the first (inclusive) to the second (exclusive). */
  readonly between?: readonly [string, string]
  readonly allVersions?: boolean
}

/** Versions of records in the order in which they were added, with the changes that added and made them. */
export async function recordVersions(on: Reading, wanted: Wanted): Promise<KeptRecord[]> {
  const { ids, between, study, sample, after, limit, allVersions = false } = wanted
  let query = on
    .selectFrom('record_versions as r')
    .innerJoin('raw', 'raw.sha256', 'r.raw')
    .innerJoin('history as a', 'a.seq', 'raw.change')
    .innerJoin('history as h', 'h.seq', 'r.change')
    .selectAll('r')
    .select(['raw.size', 'h.at', 'h.who', 'h.why'])
    .select(['a.seq as added_seq', 'a.at as added_at', 'a.who as added_who', 'a.why as added_why'])
    .orderBy('a.seq')
    .orderBy('r.version')
  if (ids !== undefined) query = query.where('r.raw', 'in', [...ids])
  if (between !== undefined) query = query.where('r.raw', '>=', between[0]).where('r.raw', '<', between[1])
  if (study !== undefined) query = query.where('r.study', '=', study)
  if (sample !== undefined) query = query.where('r.sample', '=', sample)
  if (after !== undefined) query = query.where('a.seq', '>', after)
  if (limit !== undefined) query = query.limit(limit)
  if (!allVersions) query = query.where(isLatest)
  return (await query.execute()).map((row) => ({
    ...factsOf(row),
    id: row.raw,
    size: row.size,
    version: row.version,
    supersedes: row.supersedes,
    added: { number: row.added_seq, at: row.added_at, who: row.added_who, why: row.added_why },
    change: { number: row.change, at: row.at, who: row.who, why: row.why },
  }))
}

const isLatest = sql<boolean>`not exists (select 1 from record_versions as next
  where next.raw = r.raw and next.supersedes = r.version)`

const factsOf = ({ name, study, sample, replicate, mounted_by, ball_set, day, setup }: RecordRow): RecordFacts => ({
  ...{ name, study, sample, replicate, day, setup },
  mountedBy: mounted_by,
  ballSet: ball_set,
})

/** The latest version by id or by a beginning of it that only one has. */
export async function latestRecord(on: Reading, id: string): Promise<KeptRecord> {
  if (!/^[0-9a-f]{4,64}$/.test(id)) return notThere('record', id)
  const found = await recordVersions(on, { between: [id, `${id}g`], limit: 2 })
  if (found.length < 2) return found[0] ?? notThere('record', id)
  return refuse('notUnique', {
    place: { name: 'record id', cell: id },
    what: `More than one record begins with "${id}".`,
    mend: 'Give more digits.',
  })
}

/** The row of a version, its texts looked at and what it names found. */
export async function recordRow(
  writing: Writing,
  {
    raw,
    version,
    facts,
    change,
  }: { readonly raw: Sha256; readonly version: number; readonly facts: RecordFacts; readonly change: number },
): Promise<RecordRow> {
  const { study, sample, setup, replicate } = facts
  if (study !== null && !(await isThere(writing, 'study', study))) notThere('study', study)
  if (sample !== null && !(await isThere(writing, 'sample', sample))) notThere('sample', sample)
  if (setup !== null) await checkSetup(writing, setup)
  if (replicate !== null && !(Number.isInteger(replicate) && replicate >= 1)) {
    throw new RangeError(`replicate must be a whole number from 1, got ${replicate}`)
  }
  return {
    raw,
    version,
    supersedes: version === 1 ? null : version - 1,
    name: plainText(facts.name, 'name'),
    ...{ study, sample, setup, replicate },
    mounted_by: plainTextOrNull(facts.mountedBy, 'mounted by'),
    ball_set: plainTextOrNull(facts.ballSet, 'ball set'),
    day: checkedDay(facts.day),
    change,
  }
}

/** Refuses a setup that the lab does not have. */
export async function checkSetup(on: Reading, setup: Sha256): Promise<void> {
  const row = await on.selectFrom('setups').select('sha256').where('sha256', '=', setup).executeTakeFirst()
  if (row === undefined) notThere('setup', setup)
}
