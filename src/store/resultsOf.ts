import type { Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { type Change, checkedChange } from './change.ts'
import type { Engine } from './engine.ts'
import { note, type Subject } from './history.ts'
import { inBatches } from './inBatches.ts'
import { notThere } from './notThere.ts'
import { checkSetup } from './recordRows.ts'
import { isAsKept, resultChanged, resultRow, resultRows } from './resultRows.ts'
import type { AddedResult, KeptResult, NewResult, Results } from './results.ts'
import type { ResultRow, Writing } from './schema/tables.ts'
import { refuse } from './storeProblem.ts'

/** The results of a lab. */
export const resultsOf = (engine: Engine): Results => ({
  add: (results, change) => attempt(engine.place, () => keep(engine, results, change)),
  get: (id) =>
    attempt(engine.place, async () => (await resultRows(engine.read, { ids: [id] }))[0] ?? notThere('result', id)),
  text: (id) =>
    attempt(engine.place, async () => {
      const query = engine.read.selectFrom('results').selectAll().where('id', '=', id)
      const row = (await query.executeTakeFirst()) ?? notThere('result', id)
      return isAsKept(row) ? row.text : refuse('resultChanged', resultChanged(engine.place, id))
    }),
  list: (filter = {}) => attempt(engine.place, () => resultRows(engine.read, filter)),
})

async function keep(engine: Engine, results: readonly NewResult[], said: Change): Promise<AddedResult[]> {
  const change = checkedChange(said, 'created')
  const rows = results.map(resultRow)
  const ids = rows.map(({ id }) => id)
  const added = await engine.write(async (writing) => {
    const known = await knownOf(writing, ids)
    const fresh: Omit<ResultRow, 'change'>[] = []
    for (const row of rows) {
      const before = known.get(row.id)
      if (before === undefined) fresh.push(row)
      else if (before !== row.sha256) refuse('resultDiffers', differs(engine, row))
      known.set(row.id, row.sha256)
    }
    await checkOrigins(writing, fresh)
    const subjects = fresh.map(({ id }): Subject => ({ what: 'created', kind: 'result', id, version: null }))
    const numbers = await note(writing, change, subjects)
    const whole = fresh.map((row, i) => ({ ...row, change: numbers[i] }))
    await inBatches(whole, (batch) => writing.insertInto('results').values(batch).execute())
    return new Set(fresh.map(({ id }) => id))
  })
  const kept = new Map<Sha256, KeptResult>()
  await inBatches([...new Set(ids)], async (batch) => {
    for (const result of await resultRows(engine.read, { ids: batch })) kept.set(result.id, result)
  })
  return ids.map((id) => {
    const result = kept.get(id)
    if (result === undefined) throw new Error(`result ${id} was kept and cannot be found`)
    return { result, isNew: added.delete(id) }
  })
}

async function knownOf(writing: Writing, ids: readonly Sha256[]): Promise<Map<Sha256, Sha256>> {
  const known = new Map<Sha256, Sha256>()
  await inBatches(ids, async (batch) => {
    const rows = await writing.selectFrom('results').select(['id', 'sha256']).where('id', 'in', batch).execute()
    for (const { id, sha256 } of rows) known.set(id, sha256)
  })
  return known
}

/** Refuses results of bytes or setups that the lab does not have. */
async function checkOrigins(writing: Writing, rows: readonly Omit<ResultRow, 'change'>[]): Promise<void> {
  for (const setup of new Set(rows.map((row) => row.setup))) await checkSetup(writing, setup)
  for (const raw of new Set(rows.map((row) => row.raw))) {
    const row = await writing.selectFrom('raw').select('sha256').where('sha256', '=', raw).executeTakeFirst()
    if (row === undefined) notThere('record', raw)
  }
}

const differs = (
  { place }: Engine,
  { id, kind, raw, program }: Pick<ResultRow, 'id' | 'kind' | 'raw' | 'program'>,
) => ({
  place: { ...place, name: 'result', cell: id },
  what: `The ${kind} of record ${raw} by ${program} gave other bytes than before, from the same setup, options and seed.`,
  mend: 'Verify the record; a program that computes otherwise needs a version of its own.',
})
