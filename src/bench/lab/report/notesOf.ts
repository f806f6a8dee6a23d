import { done, type Outcome } from '../../../core/terms/index.ts'
import { noteKeys, type ReportNotes } from '../../../report/index.ts'
import type { Lab } from '../../../store/index.ts'

/** What people wrote for the reports of a study: its `notes` paper. Words that belong to no item of a report are left out. */
export async function notesOf(lab: Lab, study: string | null): Promise<Outcome<ReportNotes | undefined>> {
  if (study === null) return done(undefined)
  const paper = await lab.paper({ subject: 'study', subjectId: study, kind: 'notes' })
  if (!paper.ok) return paper
  const content: unknown = paper.value?.content
  if (typeof content !== 'object' || content === null) return done(undefined)
  const said = noteKeys.flatMap((key) => {
    const text: unknown = Object.getOwnPropertyDescriptor(content, key)?.value
    return typeof text === 'string' && text.trim() !== '' ? [[key, text.trim()] as const] : []
  })
  return done(said.length === 0 ? undefined : Object.fromEntries(said))
}
