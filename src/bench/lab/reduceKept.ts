import { done, type Outcome } from '../../core/terms/index.ts'
import type { KeptRecord, NewResult } from '../../store/index.ts'
import type { AddEvent } from './addEvents.ts'
import { computeKept } from './computeKept.ts'
import type { ComputedResult } from './computeResult.ts'
import { type Computing, computing } from './computing.ts'
import { currentResult } from './currentResult.ts'
import { firstName } from './firstName.ts'
import { inOrder } from './inOrder.ts'
import type { Keeping } from './keepFiles.ts'
import { changeNow } from './labCall.ts'

/** Results of one transaction; fewer where computing them takes long. */
const batchResults = 32
const batchSeconds = 1

type Computed = { readonly record: KeptRecord; readonly result: ComputedResult }

/**
 * Reduces and fits the records that have no result with their setup yet, and keeps the results in the order of the
 * records, however many threads work. A record that cannot be reduced is told, and the others go on.
 */
export async function reduceKept(
  records: readonly KeptRecord[],
  keeping: Keeping,
  threads: number,
): Promise<Outcome<null>> {
  const { outside, onAdd } = keeping
  const by = computing(records.length, threads)
  let batch: Computed[] = []
  let begun = outside.now().getTime()
  try {
    let count = 0
    for await (const one of inOrder(records, by.width, (record) => reduceOne(record, keeping, by))) {
      if (one !== undefined && 'result' in one) batch.push(one)
      else if (one !== undefined) onAdd(one)
      const late = outside.now().getTime() - begun >= 1000 * batchSeconds
      if (batch.length >= batchResults || late) {
        const kept = await keepResults(batch, keeping)
        if (!kept.ok) return kept
        batch = []
        begun = outside.now().getTime()
      }
      outside.progress('reducing', ++count, records.length)
    }
    return await keepResults(batch, keeping)
  } finally {
    await by.close()
  }
}

/** undefined where there is nothing to do. */
async function reduceOne(
  record: KeptRecord,
  { lab, given, outside }: Keeping,
  by: Computing,
): Promise<Computed | AddEvent | undefined> {
  if (outside.stop.aborted) return undefined
  const current = await currentResult(lab, record)
  if (!current.ok) return { what: 'notReduced', record, problems: current.problems }
  if (current.value !== undefined) return undefined
  try {
    const file = await firstName(lab, record)
    if (!file.ok) return { what: 'notReduced', record, problems: file.problems }
    const task = {
      record,
      file: file.value,
      setup: record.setup,
      given,
      kind: 'fit',
      program: outside.program,
    } as const
    const result = await computeKept(lab, task, by)
    return result.ok ? { record, result: result.value } : { what: 'notReduced', record, problems: result.problems }
  } catch (error) {
    return { what: 'fault', record, message: error instanceof Error ? error.message : String(error) }
  }
}

async function keepResults(batch: readonly Computed[], keeping: Keeping): Promise<Outcome<null>> {
  if (batch.length === 0) return done(null)
  const { lab, call, outside, onAdd } = keeping
  const results = batch.map(({ result: { kind, origin, text } }): NewResult => ({ kind, origin, text }))
  const kept = await lab.results.add(results, changeNow(call, outside))
  if (!kept.ok) return kept
  for (const { record, result } of batch) onAdd({ what: 'reduced', record, brief: result.brief })
  return done(null)
}
