import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import { reportHtml, reportPdf } from '../../report/index.ts'
import type { Lab } from '../../store/index.ts'
import { askedOf } from '../lab/report/askedOf.ts'
import { compareKept } from './compareStudy.ts'
import { decisionContent } from './writeComparison.ts'

/** The report of a study's decision as its paper has it, on the day that the clock says. */
export async function decisionBytes(
  { lab, outside }: { readonly lab: Lab; readonly outside: Outside },
  study: string,
  form: 'html' | 'pdf',
): Promise<Outcome<Uint8Array<ArrayBuffer>>> {
  const compared = await compareKept(lab, { study, ask: {} }, outside)
  if (!compared.ok) return compared
  const question = await askedOf(lab, study)
  if (!question.ok) return question
  const date = outside.now().toISOString().slice(0, 10)
  const content = decisionContent(compared.value, { question: question.value, date })
  const bytes = form === 'html' ? new TextEncoder().encode(reportHtml(content)) : await reportPdf(content)
  return done(new Uint8Array(bytes))
}
