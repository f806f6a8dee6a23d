export { type ReportArgs, type WrittenReports, writeReports } from './writeReports.ts'
