import type { ReportContent } from '../reportContent.ts'
import { setPages } from './setPages.ts'
import { typstData } from './typstData.ts'

/** The report as a PDF of the same content as the HTML, its pictures drawn as vectors. See `setPages`. */
export const reportPdf = (content: ReportContent): Promise<Uint8Array> => setPages('report', typstData(content))
