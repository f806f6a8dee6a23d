import { type LimitAnswer, type LimitAsk, limitOverSpeed } from '../../../core/decide/index.ts'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import { type KeptRecord, type Lab, paperId } from '../../../store/index.ts'
import { inLab } from '../../lab/inLab.ts'
import { changeNow, type LabCall } from '../../lab/labCall.ts'
import { named, namedRecords } from '../../lab/named.ts'
import { labReplicates } from '../labReplicates.ts'
import { type LimitWords, limitAsk, limitFrom, saysLimit } from './limitWords.ts'

export interface LimitArgs {
  /** A record, a sample or a study. */
  readonly word: string
  readonly words: LimitWords
  /** Keep the limit as that of the study, for its reports. */
  readonly keep: boolean
}

/** Samples against a limit. */
export interface JudgedLimits {
  readonly title: string
  readonly ask: LimitAsk
  readonly answers: readonly LimitAnswer[]
  /** Records that say nothing, with the reason. */
  readonly left: readonly { readonly name: string; readonly why: string }[]
  /** Name of the paper that the limit comes from or was kept as; null for one that was only said. */
  readonly paper: string | null
}

/** Judges what a person names against the limit that is said, or else against that of its study. */
export const judgeLimits = (
  { word, words, keep }: LimitArgs,
  call: LabCall,
  outside: Outside,
): Promise<Outcome<JudgedLimits>> =>
  inLab(call, outside, async (lab): Promise<Outcome<JudgedLimits>> => {
    const found = await named(lab, word)
    if (!found.ok) return found
    const records = await namedRecords(lab, word)
    if (!records.ok) return records
    const study = found.value.kind === 'study' ? found.value.study.id : onlyStudy(records.value)
    const ask = await askOf(lab, { words, study })
    if (!ask.ok) return ask
    if (keep) {
      const kept = await keepLimit(lab, { study, ask: ask.value.ask, call, outside })
      if (!kept.ok) return kept
    }
    const judged = await judgeRecords(lab, records.value, ask.value.ask)
    if (!judged.ok) return judged
    const paper = keep && study !== null ? paperId(placeOf(study)) : ask.value.paper
    return done({ title: titleOf(found.value), ...judged.value, ask: ask.value.ask, paper })
  })

const titleOf = (found: Awaited<ReturnType<typeof named>> extends Outcome<infer T> ? T : never): string => {
  switch (found.kind) {
    case 'record':
      return found.record.name
    case 'study':
      return found.study.title
    case 'sample':
      return found.sample.title
  }
}

/** The study of all of the records, where they have one. */
function onlyStudy(records: readonly KeptRecord[]): string | null {
  const studies = new Set(records.map(({ study }) => study))
  return studies.size === 1 ? ([...studies][0] ?? null) : null
}

const placeOf = (study: string) => ({ subject: 'study', subjectId: study, kind: 'limit', name: '' }) as const

/** The limit of a study as it is kept; undefined where there is none. */
export async function keptLimit(lab: Lab, study: string): Promise<Outcome<LimitAsk | undefined>> {
  const paper = await lab.paper(placeOf(study))
  return paper.ok ? done(limitFrom(paper.value?.content)) : paper
}

async function askOf(
  lab: Lab,
  { words, study }: { readonly words: LimitWords; readonly study: string | null },
): Promise<Outcome<{ readonly ask: LimitAsk; readonly paper: string | null }>> {
  if (saysLimit(words)) {
    const said = limitAsk(words)
    return said.ok ? done({ ask: said.value, paper: null }) : said
  }
  const kept = study === null ? done(undefined) : await keptLimit(lab, study)
  if (!kept.ok) return kept
  return kept.value === undefined || study === null
    ? failed(noLimit)
    : done({ ask: kept.value, paper: paperId(placeOf(study)) })
}

interface Keeping {
  readonly study: string | null
  readonly ask: LimitAsk
  readonly call: LabCall
  readonly outside: Outside
}

async function keepLimit(lab: Lab, { study, ask, call, outside }: Keeping): Promise<Outcome<null>> {
  if (study === null) return failed(noStudy)
  const latest = await lab.paper(placeOf(study))
  if (!latest.ok) return latest
  const change = changeNow(call, outside)
  const kept = await lab.keepPaper({ ...placeOf(study), content: ask, after: latest.value?.version ?? 0 }, change)
  if (!kept.ok) return kept
  return kept.value.end === 'kept' ? done(null) : keepLimit(lab, { study, ask, call, outside })
}

/** Each sample of the records against the limit. */
export async function judgeRecords(
  lab: Lab,
  records: readonly KeptRecord[],
  ask: LimitAsk,
): Promise<Outcome<Pick<JudgedLimits, 'answers' | 'left'>>> {
  const read = await labReplicates(lab, records)
  if (!read.ok) return read
  const samples = Map.groupBy(read.value.usable, ({ replicate }) => replicate.sample)
  if (samples.size === 0) return failed(nothingToJudge)
  const answers = [...samples.values()].map((alike) =>
    limitOverSpeed(
      alike.map(({ replicate }) => replicate),
      ask,
    ),
  )
  return done({ answers, left: read.value.left })
}

const noLimit: Problem = {
  kind: 'limitMissing',
  class: 'wrongUse',
  place: {},
  what: 'Nobody said the limit, and the study has none.',
  mend: 'Say it with --upper or --lower, such as --upper 0.12; --keep keeps it for the study.',
}

const noStudy: Problem = {
  kind: 'studyWanted',
  class: 'wrongUse',
  place: { name: '--keep' },
  what: 'A limit is kept for a study, and these records are not of one study.',
  mend: 'Name the study, or leave --keep away.',
}

const nothingToJudge: Problem = {
  kind: 'nothingToJudge',
  class: 'badInput',
  place: {},
  what: 'None of the records has a point that may be used.',
  mend: 'See with "kufe show" why, or add records.',
}
