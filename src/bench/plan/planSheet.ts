import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { judgedAnswers, runSheetOf } from '../../core/plan/index.ts'
import {
  done,
  failed,
  type JudgedAnswer,
  type OrderedSheet,
  type Outcome,
  schemaVersion,
} from '../../core/terms/index.ts'
import { readAnswers } from '../../io/index.ts'
import { runSheetHtml } from '../../report/index.ts'
import { fileProblem } from '../fileProblem.ts'
import { writeWhole } from '../writeWhole.ts'
import type { PlannedFile } from './planFile.ts'

/** A run sheet, with what was answered. */
export interface FilledSheet {
  readonly sheet: OrderedSheet
  /** null where no answers were given: the sheet is still to be filled in. */
  readonly answers: readonly JudgedAnswer[] | null
}

/** The run sheet of a plan; with a file of answers each check is judged. */
export async function planSheet({ plan }: PlannedFile, answers?: string): Promise<Outcome<FilledSheet>> {
  const sheet = runSheetOf(plan)
  if (answers === undefined) return done({ sheet, answers: null })
  let text: string
  try {
    text = await readFile(answers, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, answers, 'read'))
  }
  const read = readAnswers(text, basename(answers), sheet)
  return read.ok ? done({ sheet, answers: judgedAnswers(sheet, read.value) }) : read
}

/** Writes a run sheet: JSON where the name ends in .json, else a page to print. */
export function writeSheet(file: string, filled: FilledSheet): Outcome<string> {
  const json = file.toLowerCase().endsWith('.json')
  const text = json
    ? `${JSON.stringify({ schemaVersion, ...filled }, null, 2)}\n`
    : runSheetHtml(filled.sheet, filled.answers ?? [])
  return writeWhole(file, text)
}
