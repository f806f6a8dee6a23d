import type { RuleSetName } from '../../../core/stats/judging/index.ts'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import { canonicalJson, type Lab, type PaperKind } from '../../../store/index.ts'
import { inLab } from '../../lab/inLab.ts'
import { changeNow, type LabCall } from '../../lab/labCall.ts'
import { ReadWords } from '../readSpeed.ts'
import { type Watch, watchDefaults } from './watchPaper.ts'
import { type RigWatch, rigWatches } from './watchRig.ts'

/** A watch as it is said on a command line. */
export interface WatchWords {
  readonly at: string
  readonly baseline?: number
  readonly rules?: string
  /** False leaves the weighted mean away. */
  readonly ewma?: boolean
}

/** Names of the sets of rules as people write them. */
const ruleSetWords: Readonly<Record<string, RuleSetName>> = {
  one: 'one',
  'western-electric': 'westernElectric',
  nelson: 'nelson',
}

/** Begins to watch a sample, or watches it in another way from now on. */
export const keepWatch = (
  { sample, words }: { readonly sample: string; readonly words: WatchWords },
  call: LabCall,
  outside: Outside,
): Promise<Outcome<readonly RigWatch[]>> =>
  inLab(call, outside, async (lab): Promise<Outcome<readonly RigWatch[]>> => {
    const read = new ReadWords()
    const at = read.speed('at', words.at)
    if (at === null) return failed(...read.problems)
    const known = await lab.samples.get(sample)
    if (!known.ok) return known
    const rules = ruleSetWords[words.rules ?? ''] ?? watchDefaults.rules
    const watch: Watch = {
      ...{ sample: known.value.id, at, rules },
      baseline: words.baseline ?? watchDefaults.baseline,
      ewma: words.ewma ?? watchDefaults.ewma,
    }
    const kept = await keepInLab(lab, { kind: 'watch', name: watch.sample, content: watch }, { call, outside })
    if (!kept.ok) return kept
    const all = await rigWatches(lab)
    return all.ok ? done(all.value.filter((one) => one.watch.sample === watch.sample)) : all
  })

/** Says what an alarm was. It is printed on no report from then on; the chart shows it as answered. */
export const answerAlarm = (alarm: string, call: LabCall, outside: Outside): Promise<Outcome<readonly RigWatch[]>> =>
  inLab(call, outside, async (lab): Promise<Outcome<readonly RigWatch[]>> => {
    if (call.why.trim() === '') return failed(noReason)
    const all = await rigWatches(lab)
    if (!all.ok) return all
    const found = all.value.find(({ alarms }) => alarms.some(({ id }) => id === alarm))
    if (found === undefined) return failed(noAlarm(alarm, all.value))
    const content = { alarm, text: call.why }
    const kept = await keepInLab(lab, { kind: 'answer', name: alarm, content }, { call, outside })
    if (!kept.ok) return kept
    const after = await rigWatches(lab)
    return after.ok ? done(after.value.filter(({ watch }) => watch.sample === found.watch.sample)) : after
  })

async function keepInLab(
  lab: Lab,
  { kind, name, content }: { readonly kind: PaperKind; readonly name: string; readonly content: object },
  { call, outside }: { readonly call: LabCall; readonly outside: Outside },
): Promise<Outcome<null>> {
  const place = { subject: 'lab', subjectId: 'lab', kind, name } as const
  const latest = await lab.paper(place)
  if (!latest.ok) return latest
  // The same once more is no new version.
  if (latest.value !== undefined && canonicalJson(latest.value.content) === canonicalJson(content)) return done(null)
  const kept = await lab.keepPaper({ ...place, content, after: latest.value?.version ?? 0 }, changeNow(call, outside))
  if (!kept.ok) return kept
  return kept.value.end === 'kept' ? done(null) : keepInLab(lab, { kind, name, content }, { call, outside })
}

const noReason: Problem = {
  kind: 'reasonWanted',
  class: 'wrongUse',
  place: { name: '--why' },
  what: 'An alarm is answered by what it was.',
  mend: 'Say it with --why, such as --why "new ball set; limits drawn anew from here".',
}

function noAlarm(alarm: string, all: readonly RigWatch[]): Problem {
  const open = all.flatMap(({ alarms }) => alarms.filter(({ answer }) => answer === null).map(({ id }) => id))
  return {
    kind: 'alarmUnknown',
    class: 'wrongUse',
    place: { name: '--answer', cell: alarm },
    what: 'There is no alarm of this name.',
    mend: open.length === 0 ? 'No alarm is open.' : `Open are ${open.slice(0, 6).join(', ')}.`,
  }
}
