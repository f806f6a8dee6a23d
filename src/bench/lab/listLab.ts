import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import type { HistoryEntry, KeptRecord, KeptResult, Lab, Titled } from '../../store/index.ts'
import { countingResult } from './currentResult.ts'
import { inLab } from './inLab.ts'
import type { LabCall } from './labCall.ts'

/** A record with the result that counts; undefined where it is not reduced. */
export interface ListedRecord {
  readonly record: KeptRecord
  readonly result: KeptResult | undefined
}

export interface Listed {
  /** Folder or address of the lab, without a password. */
  readonly where: string
  readonly title: string
  readonly records: readonly ListedRecord[]
  readonly studies: readonly Titled[]
  readonly samples: readonly Titled[]
}

export interface ListFilter {
  readonly study?: string
  readonly sample?: string
}

/** All that a lab holds, the records in the order in which they came. */
export const listLab = (filter: ListFilter, call: LabCall, outside: Outside): Promise<Outcome<Listed>> =>
  inLab(call, outside, async (lab) => {
    const about = await lab.about.list()
    if (!about.ok) return about
    const records = await listedRecords(lab, filter)
    if (!records.ok) return records
    const studies = await lab.studies.list()
    if (!studies.ok) return studies
    const samples = await lab.samples.list()
    if (!samples.ok) return samples
    return done({
      where: lab.where,
      title: about.value[0]?.title ?? '',
      records: records.value,
      studies: studies.value,
      samples: samples.value,
    })
  })

/** Records with their results. */
export async function listedRecords(lab: Lab, filter: ListFilter): Promise<Outcome<readonly ListedRecord[]>> {
  const records = await lab.records.list(filter)
  if (!records.ok) return records
  const results = await lab.results.list()
  if (!results.ok) return results
  const ofRecord = Map.groupBy(results.value, ({ origin }) => origin.raw)
  const listed: ListedRecord[] = []
  for (const record of records.value) {
    const result = await countingResult(lab, record, ofRecord.get(record.id) ?? [])
    if (!result.ok) return result
    listed.push({ record, result: result.value })
  }
  return done(listed)
}

/** The history of a lab, oldest first. */
export const labHistory = (call: LabCall, outside: Outside): Promise<Outcome<readonly HistoryEntry[]>> =>
  inLab(call, outside, async (lab) => {
    const all: HistoryEntry[] = []
    for (;;) {
      const page = await lab.history.list({ after: all.at(-1)?.change.number })
      if (!page.ok) return page
      if (page.value.length === 0) return done(all)
      all.push(...page.value)
    }
  })
