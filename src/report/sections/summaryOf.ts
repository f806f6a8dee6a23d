import { type Feature, remarkWords } from '../../core/terms/index.ts'
import type { ReportInput } from '../reportInput.ts'
import { featureInWords, inReadableUnit, regimesOf } from '../words/curveWords.ts'
import { capital, counted, inWords, listed } from '../words/printed.ts'

/** What a hurried reader gets: the answer, what may be believed, the features of the curve, and what stands against it. */
export const summaryOf = (input: ReportInput): readonly string[] =>
  [
    input.texts.answer?.trim() ?? '',
    input.reduction.window.sentence,
    input.reduction.window.plateau.sentence,
    featuresInWords(input),
    input.texts.limit?.sentences[0] ?? '',
    openAlarms(input),
    doubts(input),
  ].filter((sentence) => sentence !== '')

function openAlarms({ texts: { rigWatch } }: ReportInput): string {
  const open = rigWatch?.open.length ?? 0
  if (open === 0) return ''
  return `${capital(counted(open, 'alarm'))} of the watch over the rig ${open === 1 ? 'is' : 'are'} open: nobody has said yet what ${open === 1 ? 'it was' : 'they were'}.`
}

function featuresInWords({ curve, setup }: ReportInput): string {
  // What the data bound on neither side is no news; the table of features says so.
  const known = (curve?.features ?? []).filter(({ value, low, high }) => value !== null && (low ?? high) !== null)
  if (known.length === 0) return ''
  return `From the fitted curve, with 95 % intervals: ${listed(known.map((feature) => `${featureInWords(feature, regimesOf(setup))} ${valueInWords(feature)}`))}.`
}

function valueInWords({ value, low, high, unit }: Feature): string {
  if (value === null) return ''
  const end = (at: number | null): string => (at === null ? 'open' : inReadableUnit(at, unit, value))
  return `${inReadableUnit(value, unit)} (${end(low)} to ${end(high)})`
}

/** Kinds of remark that say a value must not be used as it is. */
function doubts({ reduction: { points } }: ReportInput): string {
  const out = points.filter(({ trusted }) => !trusted)
  if (out.length === 0) return ''
  const kinds = new Set(
    out
      .flatMap(({ remarks }) => remarks.map(({ kind }) => kind))
      .filter((kind) => remarkWords[kind].weight === 'stops'),
  )
  const because = kinds.size === 0 ? '' : ` (${listed([...kinds].map((kind) => remarkWords[kind].words))})`
  return `${capital(counted(out.length, 'step'))} of ${inWords(points.length)} must not be used as ${out.length === 1 ? 'it stands' : 'they stand'}${because}.`
}
