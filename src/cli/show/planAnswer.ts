import type { FilledSheet, HeldRecord, PlannedFile } from '../../bench/plan/index.ts'
import type { Screen } from '../screen.ts'
import { answersInWords } from './answersInWords.ts'
import { heldInWords } from './heldInWords.ts'
import { planInWords } from './planInWords.ts'

/** All that a plan answers. */
export interface PlanAnswer {
  readonly planned: PlannedFile
  readonly sheet: FilledSheet
  readonly record: HeldRecord | null
  /** Where the run sheet was written. */
  readonly sheetFile: string | undefined
  /** Laws, their limits and doubts as well. */
  readonly why: boolean
}

/** The plan, and what was asked for beside it. A record that is held against its plan comes without the plan once more. */
export function planAnswer({ planned, sheet, record, sheetFile, why }: PlanAnswer, screen: Screen): string {
  const plan = record === null && sheet.answers === null ? planInWords(planned, screen, why) : ''
  const held = record === null ? '' : heldInWords(record, screen)
  const written = sheetFile === undefined ? '' : `\nWrote the run sheet into ${sheetFile}.\n`
  return `${plan}${answersInWords(sheet, screen)}${held}${written}`.replace(/^\n/, '')
}
