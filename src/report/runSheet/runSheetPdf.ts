import type { JudgedAnswer, OrderedSheet } from '../../core/terms/index.ts'
import { setPages } from '../pdf/setPages.ts'
import { runSheetData } from './runSheetData.ts'

/** A run sheet as a PDF of the same words as the page: two sides of A4 for a usual sweep. See `setPages`. */
export const runSheetPdf = (sheet: OrderedSheet, answers: readonly JudgedAnswer[] = []): Promise<Uint8Array> =>
  setPages('runSheet', runSheetData(sheet, answers))
