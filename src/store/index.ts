export type { Bytes } from './bytes/byteStore.ts'
export { canonicalJson } from './canonicalJson.ts'
export type { Change, ChangeNote } from './change.ts'
export type { CheckOptions, CheckReport } from './check.ts'
export { checksum } from './checksum.ts'
export type { ColumnFiles, Columns } from './columns.ts'
export type { CopyReport } from './copyLab.ts'
export type { History, HistoryEntry, HistoryFilter, SubjectKind } from './history.ts'
export type { Lab } from './lab.ts'
export { newLab } from './newLab.ts'
export type { Opening } from './opening.ts'
export { openLab } from './openLab.ts'
export {
  type NamedPlace,
  type NewPaper,
  type Paper,
  type PaperKept,
  type PaperKind,
  type PaperPlace,
  type PaperSubject,
  type Papers,
  paperId,
  paperKinds,
} from './papers.ts'
export type { AddedRecord, KeptRecord, NewRecord, RecordFacts, RecordFilter, Records } from './records.ts'
export { restoreLab } from './restoreLab.ts'
export { resultId } from './resultRows.ts'
export {
  type AddedResult,
  type KeptResult,
  type NewResult,
  type ResultFilter,
  type ResultKind,
  type Results,
  resultKinds,
} from './results.ts'
export type { KeptSetup, Setups } from './setups.ts'
export { type StoreProblemKind, StoreTrouble } from './storeProblem.ts'
export type { TidyReport } from './tidy.ts'
export type { Correction, NewTitled, Titled, TitledThings, Titles } from './titled.ts'
