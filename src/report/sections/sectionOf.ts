import type { ReportSection } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import type { Numbering } from './numbering.ts'

/** Writes one section; without blocks it is left out of the report. */
export type SectionOf = (input: ReportInput, numbers: Numbering) => Omit<ReportSection, 'name'>
