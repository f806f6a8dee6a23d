export { type ReportArgs, type ReportForm, recordReport, writeReports } from './writeReports.ts'
