import { done, type Outcome } from '../../../core/terms/index.ts'
import { type ReportContent, type ReportTexts, reportOf } from '../../../report/index.ts'
import type { KeptRecord, KeptResult, Lab } from '../../../store/index.ts'
import { reportInput } from '../../reportInput.ts'
import { type AsFound, answersOf } from '../answers.ts'
import { readKept } from '../readKept.ts'
import { withChannels } from '../withChannels.ts'
import { askedOf } from './askedOf.ts'
import { judgedFor } from './judgedFor.ts'
import { notesOf } from './notesOf.ts'
import type { ReportWords } from './reportWords.ts'

interface Reported {
  readonly record: KeptRecord
  readonly result: KeptResult
}

/** The report of a kept record with its result. */
export async function reportKept(lab: Lab, reported: Reported, words: ReportDay): Promise<Outcome<ReportContent>> {
  const kept = await readKept(lab, reported.result)
  if (!kept.ok) return kept
  const texts = await reportTexts(lab, reported, words)
  if (!texts.ok) return texts
  const { reduced, setup } = kept.value
  const judged = await judgedFor(lab, reported.record)
  if (!judged.ok) return judged
  const { figures, ...said } = judged.value
  return withChannels(lab, { ...reported, setup }, async (channels) => {
    const input = reportInput(reduced, channels, { ...texts.value, ...said })
    return done(reportOf({ ...input, figures: [...input.figures, ...figures] }))
  })
}

type ReportDay = ReportWords & Pick<ReportTexts, 'date'>

/** What the lab knows for a report. The day on it is that of the result, so that it comes out the same again. */
export async function reportTexts(
  lab: Lab,
  { record, result }: Reported,
  words: ReportDay,
): Promise<Outcome<ReportTexts>> {
  const study = record.study === null ? done(undefined) : await lab.studies.get(record.study)
  if (!study.ok) return study
  const found = await answersOf(lab, record.id)
  if (!found.ok) return found
  const kept = await notesOf(lab, record.study)
  if (!kept.ok) return kept
  const asked = await askedOf(lab, record.study)
  if (!asked.ok) return asked
  // What is said now goes before what was written down earlier.
  const notes = { ...kept.value, ...words.notes }
  return done({
    ...(asked.value === undefined ? {} : { question: asked.value }),
    ...words,
    ...(Object.keys(notes).length === 0 ? {} : { notes }),
    date: words.date ?? result.change.at.slice(0, 10),
    study: study.value?.title,
    replicate: record.replicate ?? undefined,
    measured: record.day ?? undefined,
    ...(found.value === undefined ? {} : { asFound: asFoundIn(found.value) }),
    result: result.sha256,
    recompute: `kufe verify ${record.id.slice(0, 12)}`,
  })
}

const asFoundIn = ({ sheet, answers, change }: AsFound): ReportTexts['asFound'] => ({
  ...{ sheet, answers },
  by: change.who,
  on: change.at.slice(0, 10),
})
