export { type ReportArgs, writeReports } from './writeReports.ts'
