import { createHash } from 'node:crypto'
import type { Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { joinPieces } from './bytes/pieces.ts'
import { checkedChange } from './change.ts'
import type { Engine } from './engine.ts'
import { note } from './history.ts'
import { keepRecords } from './keepRecords.ts'
import { checkSeen, notThere } from './notThere.ts'
import { rawChanged, rawMissing } from './rawTrouble.ts'
import { latestRecord, recordRow, recordVersions } from './recordRows.ts'
import type { RecordFacts, Records } from './records.ts'
import { refuse } from './storeProblem.ts'
import type { Correction } from './titled.ts'

/** The records of a lab. */
export const recordsOf = (engine: Engine): Records => ({
  add: (records, change) => keepRecords(engine, records, change),
  correct: (id, facts, correction) => attempt(engine.place, () => correct(engine, { id, facts, correction })),
  get: (id) => attempt(engine.place, () => latestRecord(engine.read, id)),
  list: (filter = {}) => attempt(engine.place, () => recordVersions(engine.read, filter)),
  versions: (id) =>
    attempt(engine.place, async () => {
      const all = await recordVersions(engine.read, { ids: [id], allVersions: true })
      return all.length > 0 ? all : notThere('record', id)
    }),
  bytes: (id) => attempt(engine.place, async () => joinPieces(await rawPieces(engine, id))),
  pieces: (id) => attempt(engine.place, () => rawPieces(engine, id)),
})

interface RecordCorrection {
  readonly id: Sha256
  readonly facts: Partial<RecordFacts>
  readonly correction: Correction
}

const correct = (engine: Engine, { id, facts, correction }: RecordCorrection) =>
  engine.write(async (writing) => {
    const before = await latestRecord(writing, id)
    checkSeen(`record ${before.id.slice(0, 12)}`, before.version, correction.supersedes)
    const version = before.version + 1
    const subject = { what: 'corrected', kind: 'record', id: before.id, version } as const
    const [change] = await note(writing, checkedChange(correction, 'corrected'), [subject])
    const given = Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== undefined))
    const row = await recordRow(writing, { raw: before.id, version, facts: { ...before, ...given }, change })
    await writing.insertInto('record_versions').values(row).execute()
    return latestRecord(writing, before.id)
  })

/** The bytes as they are read; at the end they are held against their checksum. */
async function rawPieces(engine: Engine, id: Sha256): Promise<AsyncIterable<Uint8Array>> {
  const row = await engine.read.selectFrom('raw').select('size').where('sha256', '=', id).executeTakeFirst()
  if (row === undefined) return notThere('record', id)
  const bytes = await engine.raw.read(id)
  if (bytes === undefined) return refuse('rawMissing', rawMissing(engine, id))
  return (async function* () {
    const hash = createHash('sha256')
    for await (const piece of bytes) {
      hash.update(piece)
      yield piece
    }
    if (hash.digest('hex') !== id) refuse('rawChanged', rawChanged(engine, id))
  })()
}
