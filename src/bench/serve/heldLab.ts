import { done, failed, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { type KeptRecord, type KeptResult, type Lab, openLab } from '../../store/index.ts'
import { currentResult } from '../lab/currentResult.ts'
import { changeNow, type LabCall } from '../lab/labCall.ts'
import { type News, newsSince } from './labNews.ts'
import { LabPulse } from './labPulse.ts'
import { ResultShelf } from './resultShelf.ts'
import { UntilChanged } from './untilChanged.ts'

/** A lab that stays open while a server runs, with what is remembered of it between questions. */
export interface HeldLab {
  readonly lab: Lab
  /** Who serves it: stands in the history where nobody else can be named. */
  readonly call: LabCall
  readonly outside: Outside
  readonly pulse: LabPulse
  readonly shelf: ResultShelf
  readonly remembered: UntilChanged
  /** A record by its id or the beginning of it, with the result that counts. */
  counting(word: string): Promise<Outcome<CountingRecord>>
  /** What is new since the last time that this was asked, whoever kept it. */
  news(): Promise<Outcome<readonly News[]>>
  close(): Promise<void>
}

/** A record that has a result. */
export interface CountingRecord {
  readonly record: KeptRecord
  readonly result: KeptResult
}

/** Opens a lab to be held. */
export async function holdLab(call: LabCall, outside: Outside): Promise<Outcome<HeldLab>> {
  const opened = await openLab(call.place, { change: changeNow(call, outside), program: outside.program })
  if (!opened.ok) return opened
  const lab = opened.value
  const pulse = new LabPulse(lab)
  const heard = new LabPulse(lab)
  const begun = await pulse.beat()
  await heard.beat()
  if (!begun.ok) {
    await lab.close()
    return begun
  }
  return done({
    ...{ lab, call, outside, pulse, shelf: new ResultShelf(lab), remembered: new UntilChanged(pulse) },
    news: () => newsSince(lab, heard),
    counting: (word) => countingRecord(lab, word),
    close: () => lab.close(),
  })
}

async function countingRecord(lab: Lab, word: string): Promise<Outcome<CountingRecord>> {
  const record = await lab.records.get(word)
  if (!record.ok) return record
  const result = await currentResult(lab, record.value)
  if (!result.ok) return result
  return result.value === undefined
    ? failed(notReduced(record.value))
    : done({ record: record.value, result: result.value })
}

/** A record has no result, and something was asked that only a result can say. */
export const notReduced = ({ id, name }: KeptRecord): Problem => ({
  kind: 'notReduced',
  class: 'badInput',
  place: { name, cell: id },
  what: 'The record has no result with its setup.',
  mend: 'Correct its setup, or hand in its file again.',
})
