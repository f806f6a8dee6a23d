import type { ReportTable } from '../reportContent.ts'

/** Tables of few columns stay beside the heading; others need the margin as well. */
export const isWide = ({ columns }: ReportTable): boolean => columns.length > 4
