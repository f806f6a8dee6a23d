import { done, type Outcome } from '../../core/terms/index.ts'
import type { PaletteName } from '../../figure/index.ts'
import { decisionReport, type ReportContent, reportHtml, reportPdf } from '../../report/index.ts'
import { writeWhole } from '../writeWhole.ts'
import type { Compared } from './compared.ts'
import { decisionFigures } from './decisionFigures.ts'
import { drawComparison } from './drawComparison.ts'

export interface ComparisonFiles extends DecisionWords {
  readonly svg?: string
  readonly palette: PaletteName
  readonly html?: string
  readonly pdf?: string
}

/** What people say in the report of a decision. */
export interface DecisionWords {
  readonly question?: string
  readonly author?: string
  /** Day on the report, 2026-11-25. */
  readonly date?: string
}

/** Writes what was asked for: drawing, HTML, PDF. The answer names what was written. */
export async function writeComparison(compared: Compared, files: ComparisonFiles): Promise<Outcome<readonly string[]>> {
  const written: string[] = []
  const report = (): ReportContent => decisionContent(compared, files)
  for (const [file, make] of [
    [files.svg, () => drawComparison(compared, files.palette)],
    [files.html, () => reportHtml(report())],
    [files.pdf, () => reportPdf(report())],
  ] as const) {
    if (file === undefined) continue
    const one = writeWhole(file, await make())
    if (!one.ok) return one
    written.push(one.value)
  }
  return done(written)
}

/** The report of a decision, ready to be set. */
export function decisionContent(compared: Compared, { question, author, date }: DecisionWords): ReportContent {
  const { title, records, left, removals, cautions, alarms, comparison, program } = compared
  return decisionReport({
    ...{ title, question, author, date, comparison, records, left, removals, program },
    cautions: [...cautions.map(({ sentence }) => sentence), ...alarms],
    figures: decisionFigures(compared),
  })
}
