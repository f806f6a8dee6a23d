export { bodiesUsed } from './bodiesUsed.ts'
export { demoLab, isDemo } from './demoLab.ts'
export { beyondOf } from './detail/recordBeyond.ts'
export { type StepDetail, stepDetail, stretchesOf, turnsOf } from './detail/recordDetail.ts'
export { turnChangeOf } from './detail/turnChange.ts'
export {
  labGlance,
  type ShelvedRecord,
  type StudyGlance,
  setupsInLab,
  studiesAtAGlance,
  studyShelf,
} from './glance.ts'
export { type HeldLab, holdLab } from './heldLab.ts'
export { labHistoryPage } from './historyPage.ts'
export { keepPaper, type PaperWord, paperAt, paperSubject } from './keepPaper.ts'
export { makeStudy } from './makeStudy.ts'
export { type MendWords, mendRecord } from './mendRecord.ts'
export { readSetupDocument } from './readSetupDocument.ts'
export { type RecordView, recordView, windowsOf } from './recordShown.ts'
export { type HeldColumns, holdColumns } from './trace/heldColumns.ts'
export { traceOf } from './trace/traceOf.ts'
export { type KeepUpload, type KeepWords, keepUpload } from './upload/keepUpload.ts'
export { type LookedUpload, lookAtUpload, type ReadingWords } from './upload/lookAtUpload.ts'
export { type Upload, UploadArea } from './upload/uploadArea.ts'
