import type { ReportBlock, ReportFigure, ReportTable } from '../reportContent.ts'
import { descriptionOf } from './descriptionOf.ts'

/** Gives figures and tables their numbers, in the order in which they are asked for. */
export interface Numbering {
  figure(figure: ReportFigure): ReportBlock
  table(table: Omit<ReportTable, 'number'>): ReportBlock
}

export function numbering(): Numbering {
  let figures = 0
  let tables = 0
  return {
    figure(figure) {
      figures += 1
      return { kind: 'figure', figure: { ...figure, number: figures, words: descriptionOf(figure.svg) } }
    },
    table(table) {
      tables += 1
      return { kind: 'table', table: { ...table, number: tables } }
    },
  }
}
