import { basename } from 'node:path'
import { done, type Outcome, type Outside, type Sha256 } from '../../core/terms/index.ts'
import type { KeptRecord, Lab } from '../../store/index.ts'
import type { Given } from '../given.ts'
import type { OnAdd } from './addEvents.ts'
import { changeNow, type LabCall } from './labCall.ts'
import { makeNamed, type Names } from './namedThings.ts'
import { type FileToKeep, type ReadyFile, readyFile, wholeBytes } from './readyFile.ts'

export interface Keeping {
  readonly lab: Lab
  readonly call: LabCall
  readonly given: Given
  /** Study and sample, to be made where the lab does not know them. */
  readonly names: Names
  readonly outside: Outside
  readonly onAdd: OnAdd
  /** Bytes above which a file never lies in memory as a whole. */
  readonly longAbove?: number
}

/** Files of one transaction: it waits for the disk once for all their rows. Nobody waits long to hear of the first. */
const batchFiles = 64
const batchBytes = 1 << 25
const batchSeconds = 1

/**
 * Keeps files that are records, group by group; the bytes of each are on the disk when it is told as kept. A file that
 * holds no table with time and torque, or whose setup is wrong, is told with its problems, and the others go on.
 * Gives the records that were kept or known before, each once.
 */
export async function keepFiles(files: readonly FileToKeep[], keeping: Keeping): Promise<Outcome<KeptRecord[]>> {
  const { outside, onAdd, longAbove = wholeBytes } = keeping
  const records = new Map<Sha256, KeptRecord>()
  let batch: ReadyFile[] = []
  let begun = outside.now().getTime()
  const flush = async (): Promise<Outcome<null>> => {
    const kept = await keepBatch(batch, keeping)
    batch = []
    begun = outside.now().getTime()
    if (kept.ok) for (const record of kept.value) records.set(record.id, record)
    return kept.ok ? done(null) : kept
  }
  for (const [i, file] of files.entries()) {
    if (outside.stop.aborted) break
    const ready = await readyFile(file, keeping)
    const long = ready.ok && ready.value.size > longAbove // in a transaction of its own, which may fail
    if (!ready.ok) onAdd({ what: 'refused', file: file.file, problems: ready.problems })
    else if (!long) batch.push(ready.value)
    if (long || isFull(batch) || outside.now().getTime() - begun >= 1000 * batchSeconds) {
      const flushed = await flush()
      if (!flushed.ok) return flushed
    }
    if (long) {
      const kept = await keepLong(ready.value, keeping)
      if (!kept.ok) return kept
      for (const record of kept.value) records.set(record.id, record)
    }
    outside.progress('keeping', i + 1, files.length)
  }
  const flushed = await flush()
  return flushed.ok ? done([...records.values()]) : flushed
}

const isFull = (batch: readonly ReadyFile[]): boolean =>
  batch.length >= batchFiles || batch.reduce((sum, { size }) => sum + size, 0) >= batchBytes

async function keepLong(ready: ReadyFile, keeping: Keeping): Promise<Outcome<KeptRecord[]>> {
  const kept = await keepBatch([ready], keeping)
  if (kept.ok || kept.problems[0]?.kind !== 'fileChanging') return kept
  keeping.onAdd({ what: 'refused', file: ready.file, problems: kept.problems })
  return done([])
}

async function keepBatch(batch: readonly ReadyFile[], keeping: Keeping): Promise<Outcome<KeptRecord[]>> {
  if (batch.length === 0) return done([])
  const { lab, call, names, outside, onAdd } = keeping
  const change = changeNow(call, outside)
  const setups = new Set(batch.map(({ setupText }) => setupText).filter((text) => text !== undefined))
  if (setups.size > 0) {
    const named = await makeNamed(lab, names, change)
    if (!named.ok) return named
  }
  for (const text of setups) {
    const setup = await lab.setups.add(text, change)
    if (!setup.ok) return setup
  }
  const records = batch.map(({ file, bytes, facts }) => ({ ...facts, bytes, name: basename(file) }))
  const added = await lab.records.add(records, change)
  if (!added.ok) return added
  for (const [i, { record, isNew }] of added.value.entries()) {
    onAdd({ what: isNew ? 'kept' : 'known', file: batch[i].file, record })
  }
  return done(added.value.map(({ record }) => record))
}
