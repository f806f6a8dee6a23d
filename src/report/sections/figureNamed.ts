import type { ReportBlock, ReportFigure } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import type { Numbering } from './numbering.ts'

/** The figure of that name as a block, or none where it was not drawn. */
export function figureNamed(name: ReportFigure['name'], input: ReportInput, numbers: Numbering): ReportBlock[] {
  const found = input.figures.find((figure) => figure.name === name)
  return found === undefined ? [] : [numbers.figure(found)]
}
