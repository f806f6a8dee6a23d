import type { ReportBlock, ReportTable } from '../reportContent.ts'

/** Tables of few columns stay beside the heading; others need the margin as well. */
export const isWide = ({ columns }: ReportTable): boolean => columns.length > 4

/** The same for any block: pictures are always wide. */
export const isWideBlock = (block: ReportBlock): boolean =>
  block.kind === 'figure' || (block.kind === 'table' && isWide(block.table))
