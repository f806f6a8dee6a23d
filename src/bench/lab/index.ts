export type {
  CopyReport,
  HistoryEntry,
  KeptRecord,
  KeptResult,
  Titled,
} from '../../store/index.ts'
export type { AddEvent } from './addEvents.ts'
export { type Added, type AddWords, addRecords } from './addRecords.ts'
export { type AmendArgs, type Amended, amendRecord } from './amendRecord.ts'
export type { Brief } from './brief.ts'
export { backupLab, restoreBackup } from './copyLab.ts'
export { findLab } from './findLab.ts'
export type { LabCall } from './labCall.ts'
export { type Listed, type ListedRecord, labHistory, listLab } from './listLab.ts'
export { makeLab } from './makeLab.ts'
export type { Difference } from './resultDifferences.ts'
export { type Shown, type ShownGroup, type ShownRecord, showThing } from './showThing.ts'
export type { Finding, Verification } from './verification.ts'
export { verifyLab } from './verifyLab.ts'
export { watchFolder } from './watchFolder.ts'
