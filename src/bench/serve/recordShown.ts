import { done, type Outcome } from '../../core/terms/index.ts'
import type { Paper } from '../../store/index.ts'
import { windowsOf } from '../lab/currentResult.ts'
import { type ShownRecord, shownRecord } from '../lab/showThing.ts'
import type { ResultDocument } from '../resultDocument.ts'
import { type ShelvedRecord, shelvedRecord } from './glance.ts'
import type { HeldLab } from './heldLab.ts'

/** A record with all that is known of it, and its papers. */
export interface RecordView extends ShownRecord {
  readonly shelf: ShelvedRecord
  readonly papers: readonly Paper[]
  /** The result as it is kept, parsed. */
  readonly document: ResultDocument | null
  /** Text of the setup as the record is known now; null without one. */
  readonly setupText: string | null
}

/** Shows a record as it is kept; nothing is computed. */
export async function recordView(held: HeldLab, id: string): Promise<Outcome<RecordView>> {
  const { lab } = held
  const record = await lab.records.get(id)
  if (!record.ok) return record
  const shown = await shownRecord(lab, record.value)
  if (!shown.ok) return shown
  const shelf = await shelvedRecord(held, record.value)
  if (!shelf.ok) return shelf
  const papers = await lab.papersOf('record', record.value.id)
  if (!papers.ok) return papers
  const setup = record.value.setup === null ? done(undefined) : await lab.setups.get(record.value.setup)
  if (!setup.ok) return setup
  const text = shown.value.read?.text
  return done({
    ...shown.value,
    shelf: shelf.value,
    papers: papers.value,
    document: text === undefined ? null : JSON.parse(text),
    setupText: setup.value?.text ?? null,
  })
}

export { windowsOf }
