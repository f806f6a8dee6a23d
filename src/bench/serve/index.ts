export { bodiesUsed } from './bodiesUsed.ts'
export {
  labGlance,
  type ShelvedRecord,
  type StudyGlance,
  shelvedRecord,
  studiesAtAGlance,
  studyShelf,
} from './glance.ts'
export { guarded, type HeldLab, holdLab } from './heldLab.ts'
export { labHistoryPage } from './historyPage.ts'
export { keepPaper, type PaperWord, paperAt } from './keepPaper.ts'
export { makeStudy } from './makeStudy.ts'
export { type RecordView, recordView, windowsOf } from './recordShown.ts'
export { type HeldColumns, holdColumns } from './trace/heldColumns.ts'
export { type Trace, traceOf } from './trace/traceOf.ts'
