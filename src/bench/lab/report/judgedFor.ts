import { printQuantity } from '../../../core/quantity/index.ts'
import { done, type Outcome } from '../../../core/terms/index.ts'
import type { ReportFigure, ReportTexts } from '../../../report/index.ts'
import type { KeptRecord, Lab } from '../../../store/index.ts'
import { judgeRecords, keptLimit } from '../../decide/limit/judgeLimits.ts'
import { drawLimit } from '../../decide/limit/limitDocument.ts'
import { limitInWords, ruleInWords } from '../../decide/limit/limitWords.ts'
import { type RigWatch, rigWatches } from '../../decide/watch/watchRig.ts'

/** What was decided around a record: the verdict against its study's limit, and what the rig watch says. */
export interface JudgedFor extends Pick<ReportTexts, 'limit' | 'rigWatch'> {
  readonly figures: readonly ReportFigure[]
}

/** Looks up limit and check standards as they stand now; an answer that is kept later makes another report. */
export async function judgedFor(lab: Lab, record: KeptRecord): Promise<Outcome<JudgedFor>> {
  const watches = await rigWatches(lab)
  if (!watches.ok) return watches
  const rigWatch = watches.value.length === 0 ? {} : { rigWatch: watchWords(watches.value) }
  const limit = await limitOf(lab, record)
  return limit.ok ? done({ figures: [], ...limit.value, ...rigWatch }) : limit
}

function watchWords(watches: readonly RigWatch[]): NonNullable<ReportTexts['rigWatch']> {
  return {
    watched: watches.map(({ watch, title, values, series, alarms }) => {
      const at = printQuantity(watch.at, 'velocity', { digits: 3 })
      const open = alarms.filter(({ answer }) => answer === null).length
      const state = series === null ? 'too few for a chart yet' : `${alarms.length} alarms, ${open} of them open`
      return `Check standard ${title} at ${at}: ${values} measurements, ${state}.`
    }),
    open: watches.flatMap(({ title, alarms }) =>
      alarms
        .filter(({ answer }) => answer === null)
        .map(({ label, words, id }) => ({ sentence: `${title}, ${label}: ${words}`, id })),
    ),
  }
}

async function limitOf(lab: Lab, record: KeptRecord): Promise<Outcome<Partial<JudgedFor>>> {
  if (record.study === null) return done({})
  const ask = await keptLimit(lab, record.study)
  if (!ask.ok || ask.value === undefined) return ask.ok ? done({}) : ask
  const alike =
    record.sample === null ? done([record]) : await lab.records.list({ study: record.study, sample: record.sample })
  if (!alike.ok) return alike
  const together = await judgeRecords(lab, alike.value, ask.value)
  // A record without a usable point has no verdict, and its report says elsewhere why.
  if (!together.ok) return done({})
  const alone = alike.value.length > 1 ? await judgeRecords(lab, [record], ask.value) : together
  const sentences = [...together.value.answers, ...(alone.ok && alone !== together ? alone.value.answers : [])].map(
    ({ sentence }) => sentence,
  )
  const judged = { ask: ask.value, answers: together.value.answers }
  const svg = drawLimit(judged, 0, 'light')
  const caption =
    'Friction against the written limit: intervals at 95 % of the mean of all mountings, limit, guard band.'
  const figures =
    svg === undefined ? [] : [{ name: 'limit', svg, darkSvg: drawLimit(judged, 0, 'dark') ?? null, caption } as const]
  return done({
    limit: { limit: limitInWords(ask.value.tolerance), rule: ruleInWords(ask.value.rule), sentences },
    figures,
  })
}
