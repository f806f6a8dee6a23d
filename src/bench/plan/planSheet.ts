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
import { runSheetHtml, runSheetPdf } from '../../report/index.ts'
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

/** Writes a run sheet: JSON where the name ends in .json, a PDF where it ends in .pdf, else a page to print. */
export async function writeSheet(file: string, filled: FilledSheet): Promise<Outcome<string>> {
  return writeWhole(file, await written(file.toLowerCase(), filled))
}

async function written(name: string, { sheet, answers }: FilledSheet): Promise<string | Uint8Array> {
  if (name.endsWith('.json')) return `${JSON.stringify({ schemaVersion, sheet, answers }, null, 2)}\n`
  return name.endsWith('.pdf') ? runSheetPdf(sheet, answers ?? []) : runSheetHtml(sheet, answers ?? [])
}
