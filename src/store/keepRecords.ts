import type { Outcome, Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import type { Staged } from './bytes/byteStore.ts'
import { type Change, checkedChange } from './change.ts'
import { checksum } from './checksum.ts'
import type { Engine } from './engine.ts'
import { note, type Subject } from './history.ts'
import { inBatches } from './inBatches.ts'
import { recordRow, recordVersions } from './recordRows.ts'
import type { AddedRecord, NewRecord, RecordFacts } from './records.ts'
import type { RecordRow, Writing } from './schema/tables.ts'

/** A record on its way in; `staged` undefined where its bytes were known before. */
interface Incoming {
  readonly id: Sha256
  readonly record: NewRecord
  readonly staged: Staged | undefined
}

/** See `Records.add`. Bytes are durable before the transaction begins; in it they get their names and their rows. */
export function keepRecords(
  engine: Engine,
  records: readonly NewRecord[],
  said: Change,
): Promise<Outcome<AddedRecord[]>> {
  return attempt(engine.place, async () => {
    const change = checkedChange(said, 'created')
    const incoming: Incoming[] = []
    try {
      for (const record of records) incoming.push(await takeIn(engine, record))
      const staged = incoming.flatMap((one) => one.staged ?? [])
      await engine.raw.harden(staged)
      const added =
        staged.length === 0
          ? new Set<Sha256>()
          : await engine.write((writing) => keepNew(engine, writing, { incoming, change }))
      return await answer(engine, incoming, added)
    } finally {
      for (const { staged } of incoming) staged?.discard()
    }
  })
}

/** Bytes in memory are looked up first: adding a whole folder again then costs no writing. */
async function takeIn(engine: Engine, record: NewRecord): Promise<Incoming> {
  if (record.bytes instanceof Uint8Array) {
    const id = checksum(record.bytes)
    if ((await knownOf(engine.read, [id])).has(id)) return { id, record, staged: undefined }
  }
  const staged = await engine.raw.stage(record.bytes)
  return { id: staged.sha256, record, staged }
}

async function knownOf(on: Engine['read'], ids: readonly Sha256[]): Promise<Set<Sha256>> {
  const known = new Set<Sha256>()
  await inBatches(ids, async (batch) => {
    const rows = await on.selectFrom('raw').select('sha256').where('sha256', 'in', batch).execute()
    for (const { sha256 } of rows) known.add(sha256)
  })
  return known
}

/** Keeps what is new, each once, and gives the ids of that. */
async function keepNew(
  engine: Engine,
  writing: Writing,
  { incoming, change }: { readonly incoming: readonly Incoming[]; readonly change: Change },
): Promise<Set<Sha256>> {
  const seen = await knownOf(
    writing,
    incoming.map(({ id }) => id),
  )
  const fresh: (Incoming & { readonly staged: Staged })[] = []
  for (const one of incoming) {
    if (one.staged === undefined || seen.has(one.id)) continue
    seen.add(one.id)
    fresh.push({ ...one, staged: one.staged })
  }
  const subjects = fresh.map(({ id }): Subject => ({ what: 'created', kind: 'record', id, version: 1 }))
  const numbers = await note(writing, change, subjects)
  const rows: RecordRow[] = []
  for (const [i, { id, record }] of fresh.entries()) {
    rows.push(await recordRow(writing, { raw: id, version: 1, facts: wholeFacts(record), change: numbers[i] }))
  }
  const raws = fresh.map(({ id, staged }, i) => ({ sha256: id, size: staged.size, change: numbers[i] }))
  await inBatches(raws, (batch) => writing.insertInto('raw').values(batch).execute())
  await inBatches(rows, (batch) => writing.insertInto('record_versions').values(batch).execute())
  await engine.raw.settle(
    writing,
    fresh.map(({ staged }) => staged),
  )
  return new Set(fresh.map(({ id }) => id))
}

const wholeFacts = (facts: Pick<RecordFacts, 'name'> & Partial<RecordFacts>): RecordFacts => ({
  name: facts.name,
  study: facts.study ?? null,
  sample: facts.sample ?? null,
  replicate: facts.replicate ?? null,
  mountedBy: facts.mountedBy ?? null,
  ballSet: facts.ballSet ?? null,
  day: facts.day ?? null,
  setup: facts.setup ?? null,
})

/** What became of each, in the order of the call; the second of two equal ones is not new. */
async function answer(engine: Engine, incoming: readonly Incoming[], added: Set<Sha256>): Promise<AddedRecord[]> {
  const kept = new Map<Sha256, AddedRecord['record']>()
  await inBatches([...new Set(incoming.map(({ id }) => id))], async (ids) => {
    for (const record of await recordVersions(engine.read, { ids })) kept.set(record.id, record)
  })
  return incoming.map(({ id }) => {
    const record = kept.get(id)
    if (record === undefined) throw new Error(`record ${id} was kept and cannot be found`)
    return { record, isNew: added.delete(id) }
  })
}
