import { done, type Outcome } from '../../core/terms/index.ts'
import type { Paper, PaperKept, PaperKind, PaperSubject } from '../../store/index.ts'
import { changeNow } from '../lab/labCall.ts'
import type { HeldLab } from './heldLab.ts'

/** Where a paper has its place, as people name it: a record by the beginning of its id. */
export interface PaperWord {
  readonly subject: PaperSubject
  readonly word: string
  readonly kind: PaperKind
  readonly name?: string
}

/** The latest version; undefined where there is none. */
export async function paperAt(held: HeldLab, at: PaperWord): Promise<Outcome<Paper | undefined>> {
  const id = await paperSubject(held, at)
  if (!id.ok) return id
  const { subject, kind, name } = at
  return held.lab.paper({ subject, subjectId: id.value, kind, name })
}

/** What is to be kept, by whom and why; `after` is the version that its writer saw. */
export interface PaperWish {
  readonly content: unknown
  readonly by: string
  readonly why: string
  readonly after: number
}

/** Keeps a new version, or says that somebody wrote in between. */
export async function keepPaper(held: HeldLab, at: PaperWord, wish: PaperWish): Promise<Outcome<PaperKept>> {
  const id = await paperSubject(held, at)
  if (!id.ok) return id
  const { subject, kind, name } = at
  const { content, after, by, why } = wish
  // Pages keep what was typed as it is typed; nobody gives a reason for each of it.
  const reason = why.trim() === '' ? 'changed in the bench' : why
  const change = changeNow({ ...held.call, who: by, why: reason }, held.outside)
  return held.lab.keepPaper({ subject, subjectId: id.value, kind, name, content, after }, change)
}

/** Id of what a paper is about; refuses what the lab does not have. */
export async function paperSubject({ lab }: HeldLab, { subject, word }: PaperWord): Promise<Outcome<string>> {
  if (subject === 'lab') return done('lab')
  if (subject === 'study') {
    const study = await lab.studies.get(word)
    return study.ok ? done(study.value.id) : study
  }
  const record = await lab.records.get(word)
  return record.ok ? done(record.value.id) : record
}
