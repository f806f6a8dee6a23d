import {
  curveThrough,
  fewestWatched,
  type WatchAlarm,
  type WatchedSeries,
  type WatchedValue,
  watchedSeries,
} from '../../../core/decide/index.ts'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import type { ChangeNote, Lab } from '../../../store/index.ts'
import { inLab } from '../../lab/inLab.ts'
import type { LabCall } from '../../lab/labCall.ts'
import { type LabReplicate, labReplicates } from '../labReplicates.ts'
import { answerFrom, type Watch, watchFrom } from './watchPaper.ts'

/** An alarm with its name in the lab, and what somebody has said of it. */
export interface LabAlarm extends WatchAlarm {
  readonly id: string
  readonly answer: { readonly text: string; readonly by: string; readonly on: string } | null
}

/** One check standard of a lab as it is watched; `series` is null while it has too few values. */
export interface RigWatch {
  readonly watch: Watch
  readonly title: string
  readonly values: number
  readonly series: WatchedSeries | null
  readonly alarms: readonly LabAlarm[]
  /** Records that say nothing, with the reason. */
  readonly left: readonly { readonly name: string; readonly why: string }[]
}

/** Every check standard that the lab watches, or the one of a sample. */
export const watchRig = (
  sample: string | undefined,
  call: LabCall,
  outside: Outside,
): Promise<Outcome<readonly RigWatch[]>> =>
  inLab(call, outside, async (lab) => {
    const all = await rigWatches(lab)
    if (!all.ok) return all
    const found = sample === undefined ? all.value : all.value.filter(({ watch }) => watch.sample === sample)
    return found.length > 0 ? done(found) : failed(nothingWatched(sample))
  })

/** All that a lab watches. */
export async function rigWatches(lab: Lab): Promise<Outcome<readonly RigWatch[]>> {
  const papers = await lab.papersOf('lab', 'lab')
  if (!papers.ok) return papers
  const watches = papers.value.flatMap(({ kind, content }) => (kind === 'watch' ? (watchFrom(content) ?? []) : []))
  const answers = new Map<string, NonNullable<LabAlarm['answer']>>()
  for (const { kind, content, change } of papers.value) {
    const said = kind === 'answer' ? answerFrom(content) : undefined
    if (said !== undefined) answers.set(said.alarm, answered(said.text, change))
  }
  const found: RigWatch[] = []
  for (const watch of watches) {
    const one = await rigWatch(lab, watch, answers)
    if (!one.ok) return one
    found.push(one.value)
  }
  return done(found)
}

const answered = (text: string, { who, at }: ChangeNote) => ({ text, by: who, on: at.slice(0, 10) })

async function rigWatch(
  lab: Lab,
  watch: Watch,
  answers: ReadonlyMap<string, NonNullable<LabAlarm['answer']>>,
): Promise<Outcome<RigWatch>> {
  const records = await lab.records.list({ sample: watch.sample })
  if (!records.ok) return records
  const sample = await lab.samples.get(watch.sample)
  const read = await labReplicates(lab, records.value)
  if (!read.ok) return read
  // Days come first; records of one day keep the order in which they were added.
  const ordered = read.value.usable.toSorted((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0))
  const left = [...read.value.left]
  const values = ordered.flatMap((one) => {
    const value = watchedValue(one, { watch, first: ordered[0] })
    if (value === undefined) left.push({ name: one.record.name, why: 'it does not cover the watched speed' })
    return value ?? []
  })
  const series = values.length >= fewestWatched ? watchedSeries(values, watch) : null
  const alarms = (series?.alarms ?? []).map((alarm): LabAlarm => {
    const id = alarmId(watch.sample, alarm)
    return { ...alarm, id, answer: answers.get(id) ?? null }
  })
  const title = sample.ok ? sample.value.title : watch.sample
  return done({ watch, title, values: values.length, series, alarms, left })
}

/** Stable: the same alarm of the same record has the same name tomorrow. Small letters, digits and hyphens, as papers are called. */
const alarmId = (sample: string, { kind, record }: WatchAlarm): string =>
  `${sample}-${record.slice(0, 8)}-${kind.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`

const dayOf = ({ record }: LabReplicate): string => record.day ?? record.added.at.slice(0, 10)

function watchedValue(
  one: LabReplicate,
  { watch, first }: { readonly watch: Watch; readonly first: LabReplicate },
): WatchedValue | undefined {
  const { record, replicate, reduced } = one
  const curve = curveThrough(replicate.points)
  if (watch.at < curve.slowest / 1.02 || watch.at > curve.fastest * 1.02) return undefined
  const temperatures = reduced.reduction.points.flatMap(({ temperature }) => temperature ?? [])
  const mean = temperatures.reduce((sum, kelvin) => sum + kelvin, 0) / temperatures.length
  return {
    record: record.id,
    label: dayOf(one),
    friction: Math.exp(curve.lnFriction(watch.at)),
    day: daysBetween(dayOf(first), dayOf(one)),
    temperature: temperatures.length > 0 ? mean : (reduced.setup.run.temperature ?? null),
    ballSet: replicate.blocks.ballSet,
    operator: replicate.blocks.operator,
  }
}

function daysBetween(from: string, to: string): number | null {
  const days = (Date.parse(to) - Date.parse(from)) / 86_400_000
  return Number.isFinite(days) ? days : null
}

const nothingWatched = (sample: string | undefined): Problem => ({
  kind: 'nothingWatched',
  class: 'wrongUse',
  place: sample === undefined ? {} : { name: 'sample', cell: sample },
  what: sample === undefined ? 'This lab watches no check standard.' : `The sample "${sample}" is not watched.`,
  mend: 'Say which sample is measured again and again, and at which speed: kufe rig-watch SAMPLE --at "10 mm/s".',
})
