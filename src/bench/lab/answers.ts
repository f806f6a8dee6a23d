import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { judgedAnswers } from '../../core/plan/index.ts'
import {
  type AnsweredSheet,
  done,
  failed,
  type JudgedAnswer,
  type OrderedSheet,
  type Outcome,
  type Sha256,
} from '../../core/terms/index.ts'
import { answeredSheet, readAnsweredSheet } from '../../io/index.ts'
import { type Change, type ChangeNote, canonicalJson, type Lab } from '../../store/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** A filled run sheet as the lab keeps it with a record, its answers judged. */
export interface AsFound {
  readonly sheet: OrderedSheet
  readonly answers: readonly JudgedAnswer[]
  readonly version: number
  readonly change: ChangeNote
}

/** Reads the file of a filled run sheet. */
export function readAnswersFile(file: string): Outcome<AnsweredSheet> {
  try {
    return readAnsweredSheet(readFileSync(file, 'utf8'), basename(file))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
}

const place = (record: Sha256) => ({ subject: 'record', subjectId: record, kind: 'runSheet' }) as const

/** Keeps a filled run sheet with a record; the same once more is no new version. */
export async function keepAnswers(
  lab: Lab,
  { record, filled, change }: { readonly record: Sha256; readonly filled: AnsweredSheet; readonly change: Change },
): Promise<Outcome<{ readonly version: number; readonly isNew: boolean }>> {
  const latest = await lab.paper(place(record))
  if (!latest.ok) return latest
  const version = latest.value?.version ?? 0
  if (latest.value !== undefined && canonicalJson(latest.value.content) === canonicalJson(filled)) {
    return done({ version, isNew: false })
  }
  const why = change.why === '' ? 'answers of the run sheet' : change.why
  const kept = await lab.keepPaper({ ...place(record), content: filled, after: version }, { ...change, why })
  if (!kept.ok) return kept
  if (kept.value.end === 'kept') return done({ version: kept.value.paper.version, isNew: true })
  return keepAnswers(lab, { record, filled, change }) // somebody wrote in between: what they wrote is superseded with a reason
}

/** What was found at the rig for a record; undefined where nobody kept it, or another program did in a form of its own. */
export async function answersOf(lab: Lab, record: Sha256): Promise<Outcome<AsFound | undefined>> {
  const paper = await lab.paper(place(record))
  if (!paper.ok || paper.value === undefined) return paper.ok ? done(undefined) : paper
  const filled = answeredSheet(paper.value.content, 'runSheet')
  if (!filled.ok) return done(undefined)
  const { sheet, answers } = filled.value
  const { version, change } = paper.value
  return done({ sheet, answers: judgedAnswers(sheet, answers), version, change })
}
