import type { MovedWindow, Outcome } from '../../core/terms/index.ts'
import { inLab } from '../lab/inLab.ts'
import { changeNow } from '../lab/labCall.ts'
import type { Mends } from '../lab/mends.ts'
import { type MovedRecord, moveWindows } from '../lab/moveWindows.ts'
import type { StoppableDesk } from './upload/keepUpload.ts'

/** Windows of a record as they shall be, by whom and why. */
export interface MendWords {
  readonly record: string
  readonly windows: readonly MovedWindow[]
  readonly answers?: Mends['answers']
  readonly after: number
  readonly by: string
  readonly why: string
}

/** Moves windows of a record in a lab of its own connection; see `moveWindows`. */
export const mendRecord = (
  words: MendWords,
  { call, outside, mayKeep }: StoppableDesk,
): Promise<Outcome<MovedRecord>> =>
  inLab(call, outside, async (lab): Promise<Outcome<MovedRecord>> => {
    const record = await lab.records.get(words.record)
    if (!record.ok) return record
    const why = words.why.trim() === '' ? 'windows moved in the bench' : words.why
    const change = changeNow({ ...call, who: words.by, why }, outside)
    const { windows, answers, after } = words
    return moveWindows(lab, { record: record.value, windows, answers, after }, { change, outside, mayKeep })
  })
