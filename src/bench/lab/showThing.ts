import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import type { KeptRecord, KeptResult, Lab, Titled } from '../../store/index.ts'
import { countingResult } from './currentResult.ts'
import { inLab } from './inLab.ts'
import type { LabCall } from './labCall.ts'
import { type ListedRecord, listedRecords } from './listLab.ts'
import { named } from './named.ts'
import { type ReadKept, readKept } from './readKept.ts'

/** A record with all that is known of it: its versions, its results, and the one that counts. */
export interface ShownRecord {
  readonly kind: 'record'
  readonly record: KeptRecord
  /** Oldest first. */
  readonly versions: readonly KeptRecord[]
  /** In the order in which they were added. */
  readonly results: readonly KeptResult[]
  readonly current: KeptResult | undefined
  readonly read: ReadKept | undefined
}

/** A study or a sample with its records. */
export interface ShownGroup {
  readonly kind: 'study' | 'sample'
  readonly group: Titled
  readonly versions: readonly Titled[]
  readonly records: readonly ListedRecord[]
}

export type Shown = ShownRecord | ShownGroup

/** Shows what a person names, as it is kept; nothing is computed. */
export const showThing = (word: string, call: LabCall, outside: Outside): Promise<Outcome<Shown>> =>
  inLab(call, outside, async (lab): Promise<Outcome<Shown>> => {
    const found = await named(lab, word)
    if (!found.ok) return found
    if (found.value.kind === 'record') return shownRecord(lab, found.value.record)
    return found.value.kind === 'study'
      ? shownGroup(lab, 'study', found.value.study)
      : shownGroup(lab, 'sample', found.value.sample)
  })

/** A record that is known, with all the rest. */
export async function shownRecord(lab: Lab, record: KeptRecord): Promise<Outcome<ShownRecord>> {
  const versions = await lab.records.versions(record.id)
  if (!versions.ok) return versions
  const results = await lab.results.list({ record: record.id })
  if (!results.ok) return results
  const current = await countingResult(lab, record, results.value)
  if (!current.ok) return current
  const told = { versions: versions.value, results: results.value, current: current.value }
  const shown = { kind: 'record', record, ...told } as const
  if (current.value === undefined) return done({ ...shown, read: undefined })
  const read = await readKept(lab, current.value)
  return read.ok ? done({ ...shown, read: read.value }) : read
}

async function shownGroup(lab: Lab, kind: ShownGroup['kind'], group: Titled): Promise<Outcome<ShownGroup>> {
  const versions = await lab[kind === 'study' ? 'studies' : 'samples'].versions(group.id)
  if (!versions.ok) return versions
  const records = await listedRecords(lab, { [kind]: group.id })
  return records.ok ? done({ kind, group, versions: versions.value, records: records.value }) : records
}
