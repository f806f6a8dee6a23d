import { type AmendArgs, amendRecord, verifyLab } from '../../bench/lab/index.ts'
import { exportLab } from '../../bench/lab/package/index.ts'
import { type ReportForm, recordReport } from '../../bench/lab/report/index.ts'
import {
  beyondOf,
  type HeldColumns,
  holdColumns,
  type KeepUpload,
  keepUpload,
  lookAtUpload,
  type MendWords,
  mendRecord,
  type ReadingWords,
  stepDetail,
  stretchesOf,
  turnChangeOf,
  turnsOf,
} from '../../bench/serve/index.ts'
import type { TurnQuantity } from '../../core/reduce/index.ts'
import type { TaskDesk } from './taskTalk.ts'

interface OfColumns {
  readonly columns: HeldColumns
}

/** What the threads can do, each in the words of its use case. */
export const tasks = {
  columns: ({ record }: { readonly record: string }, { call, outside }: TaskDesk) => holdColumns(record, call, outside),
  stretches: ({ columns }: OfColumns, desk: TaskDesk) => stretchesOf(columns, desk),
  beyond: ({ columns }: OfColumns, desk: TaskDesk) => beyondOf(columns, desk),
  turns: ({ columns, quantity }: OfColumns & { readonly quantity: TurnQuantity }, desk: TaskDesk) =>
    turnsOf(columns, quantity, desk),
  turnChange: ({ columns, quantity }: OfColumns & { readonly quantity: TurnQuantity }, desk: TaskDesk) =>
    turnChangeOf(columns, quantity, desk),
  step: ({ columns, step }: OfColumns & { readonly step: number }, desk: TaskDesk) => stepDetail(columns, step, desk),
  look: ({ file, name, reading }: { readonly file: string; readonly name: string; readonly reading: ReadingWords }) =>
    lookAtUpload(file, name, reading),
  keep: (upload: KeepUpload, desk: TaskDesk) => keepUpload(upload, desk),
  mend: (words: MendWords, desk: TaskDesk) => mendRecord(words, desk),
  amend: (args: AmendArgs, { call, outside, mayKeep }: TaskDesk) => {
    mayKeep() // from here on it is done whole
    return amendRecord(args, call, outside)
  },
  verify: ({ record }: { readonly record: string }, { call, outside }: TaskDesk) =>
    verifyLab({ word: record, keep: false, threads: 0 }, call, outside),
  report: (wish: { readonly word: string; readonly form: ReportForm }, { call, outside }: TaskDesk) =>
    recordReport(wish, call, outside),
  package: ({ study, out }: { readonly study: string; readonly out: string }, { call, outside }: TaskDesk) =>
    exportLab({ word: study, out, creators: [], reports: true }, call, outside),
} as const
