import type { Replicate } from '../../core/decide/index.ts'
import { done, type Outcome } from '../../core/terms/index.ts'
import type { KeptRecord, Lab } from '../../store/index.ts'
import { replicateOf } from '../compare/replicateOf.ts'
import { currentResult } from '../lab/currentResult.ts'
import { readKept } from '../lab/readKept.ts'
import type { ReducedRecord } from '../reducedRecord.ts'

/** A kept record with its result, read as a replicate of its sample. */
export interface LabReplicate {
  readonly record: KeptRecord
  readonly reduced: ReducedRecord
  readonly replicate: Replicate
}

/** Records that may carry a decision, and those that cannot with the reason. */
export interface LabReplicates {
  readonly usable: readonly LabReplicate[]
  readonly left: readonly { readonly name: string; readonly why: string }[]
}

/** Reads the results of records as they are kept; nothing is reduced anew. */
export async function labReplicates(lab: Lab, records: readonly KeptRecord[]): Promise<Outcome<LabReplicates>> {
  const usable: LabReplicate[] = []
  const left: { name: string; why: string }[] = []
  const titles = await sampleTitles(lab)
  if (!titles.ok) return titles
  for (const record of records) {
    const result = await currentResult(lab, record)
    if (!result.ok) return result
    if (result.value === undefined) {
      left.push({ name: record.name, why: 'it is not reduced yet' })
      continue
    }
    const read = await readKept(lab, result.value)
    if (!read.ok) return read
    const { reduced } = read.value
    const { id, name, day, mountedBy, ballSet } = record
    // Without a sample in the lab's books the setup may still say one.
    const sample = titles.value.get(record.sample ?? '') ?? record.sample ?? reduced.setup.run.sample ?? name
    const operator = mountedBy ?? reduced.setup.run.operator ?? null
    const replicate = replicateOf(reduced, { record: id, name, sample, blocks: { day, operator, ballSet } })
    if (replicate.points.length > 0) usable.push({ record, reduced, replicate })
    else left.push({ name, why: 'it has no point that may be used' })
  }
  return done({ usable, left })
}

async function sampleTitles(lab: Lab): Promise<Outcome<ReadonlyMap<string, string>>> {
  const samples = await lab.samples.list()
  return samples.ok ? done(new Map(samples.value.map(({ id, title }) => [id, title]))) : samples
}
