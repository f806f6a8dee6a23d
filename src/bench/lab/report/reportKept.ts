import { done, type Outcome } from '../../../core/terms/index.ts'
import { type ReportContent, type ReportTexts, reportOf } from '../../../report/index.ts'
import type { KeptRecord, KeptResult, Lab } from '../../../store/index.ts'
import { reportInput } from '../../reportInput.ts'
import { readKept } from '../readKept.ts'
import { withRecord } from '../withRecord.ts'
import type { ReportWords } from './reportWords.ts'

/** The report of a kept record with its result. The day on it is that of the result, so that it comes out the same again. */
export async function reportKept(
  lab: Lab,
  { record, result }: { readonly record: KeptRecord; readonly result: KeptResult },
  words: ReportWords & Pick<ReportTexts, 'date'>,
): Promise<Outcome<ReportContent>> {
  const kept = await readKept(lab, result)
  if (!kept.ok) return kept
  const study = record.study === null ? done(undefined) : await lab.studies.get(record.study)
  if (!study.ok) return study
  const texts: ReportTexts = {
    ...words,
    date: words.date ?? result.change.at.slice(0, 10),
    study: study.value?.title,
    replicate: record.replicate ?? undefined,
    measured: record.day ?? undefined,
    result: result.sha256,
    recompute: `kufe verify ${record.id.slice(0, 12)}`,
  }
  const wanted = { record, result, setup: kept.value.setup }
  return withRecord(lab, wanted, async ({ channels }) =>
    done(reportOf(reportInput(kept.value.reduced, channels, texts))),
  )
}
