export { type NoteKey, noteKeys, type ReportNotes } from './completeness/reportNotes.ts'
export type { DecisionInput } from './decision/decisionInput.ts'
export { decisionReport } from './decision/decisionReport.ts'
export { reportHtml } from './html/reportHtml.ts'
export { methodParagraphs } from './method/methodParagraphs.ts'
export { reportPdf } from './pdf/reportPdf.ts'
export {
  type ReportBlock,
  type ReportContent,
  type ReportFigure,
  type ReportFinding,
  sectionNames,
} from './reportContent.ts'
export type { ReportInput, ReportTexts } from './reportInput.ts'
export { reportOf } from './reportOf.ts'
export { runSheetHtml } from './runSheet/runSheetHtml.ts'
export { runSheetPdf } from './runSheet/runSheetPdf.ts'
