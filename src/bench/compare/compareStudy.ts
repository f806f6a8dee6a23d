import {
  askOf,
  type CompareAsk,
  type ComparedSystem,
  chosenSamples,
  compareSamples,
  decisionFrom,
  marginAsked,
  type Replicate,
} from '../../core/decide/index.ts'
import { done, failed, type Outcome, type Outside, type Problem, type Progress } from '../../core/terms/index.ts'
import type { KeptRecord, Lab } from '../../store/index.ts'
import { systemOf } from '../decide/comparable/holdSystems.ts'
import { type RigWatch, rigWatches } from '../decide/watch/watchRig.ts'
import { inLab } from '../lab/inLab.ts'
import type { LabCall } from '../lab/labCall.ts'
import { listedRecords } from '../lab/listLab.ts'
import { readKept } from '../lab/readKept.ts'
import { cautionsOf } from './cautionsOf.ts'
import type { Compared, ComparedRecord } from './compared.ts'
import { type CompareWords, compareAsk } from './compareWords.ts'
import { replicateOf } from './replicateOf.ts'

export interface CompareStudyArgs {
  readonly study: string
  /** What is said here goes before the study's paper of decision. */
  readonly ask: CompareWords
  /** Compares these samples alone, by their titles; what the paper says where left out. */
  readonly samples?: readonly string[]
}

/** Holds the samples of a kept study against each other, as their results are kept; nothing is reduced anew. */
export const compareStudy = (
  { study, samples, ask }: CompareStudyArgs,
  call: LabCall,
  outside: Outside,
): Promise<Outcome<Compared>> =>
  inLab(call, outside, async (lab) => {
    const said = compareAsk(ask)
    return said.ok ? compareKept(lab, { study, samples, ask: said.value }, outside) : said
  })

/** The same in a lab that is open: what is said in `ask` goes before the study's paper of decision. */
export async function compareKept(
  lab: Lab,
  { study, samples, ask }: { readonly study: string; readonly samples?: readonly string[]; readonly ask: CompareAsk },
  outside: Outside,
): Promise<Outcome<Compared>> {
  const gathered = await studyReplicates(lab, study, outside.progress)
  if (!gathered.ok) return gathered
  const paper = await lab.paper({ subject: 'study', subjectId: study, kind: 'decision' })
  if (!paper.ok) return paper
  const decision = decisionFrom(paper.value?.content)
  const question = await lab.paper({ subject: 'study', subjectId: study, kind: 'question' })
  if (!question.ok) return question
  const kept = askOf(decision)
  const asked = decision.scale === 'ratio' ? marginAsked(question.value?.content) : undefined
  const { title, systems } = gathered.value
  if (gathered.value.replicates.length === 0) return failed(nothingThere(study))
  const { replicates, aside } = chosenSamples(gathered.value.replicates, samples ?? decision.samples)
  const records = gathered.value.records.filter(({ sample }) => !aside.includes(sample))
  const left = [
    ...gathered.value.left,
    ...aside.map((name) => ({ name, why: 'it was not chosen, or has one replicate' })),
  ]
  const cautions = cautionsOf(new Map([...systems].filter(([sample]) => !aside.includes(sample))))
  // A record that has left the study since takes its removal with it.
  const known = (kept.removals ?? []).filter(({ record }) => records.some((one) => one.record === record))
  const removals = [...known, ...named(ask.removals ?? [], records)]
  const together = {
    ...kept,
    ...ask,
    options: { ...(asked === undefined ? {} : { margin: asked }), ...kept.options, ...ask.options },
    removals,
  }
  const watches = await rigWatches(lab)
  if (!watches.ok) return watches
  const comparison = compareSamples(replicates, together)
  if (!comparison.ok) return comparison
  return done({
    title,
    records,
    left,
    removals,
    cautions,
    alarms: openAlarms(watches.value),
    comparison: comparison.value,
    program: outside.program,
  })
}

/** They block nothing, and stand on every decision until somebody answers them. */
const openAlarms = (watches: readonly RigWatch[]): string[] =>
  watches.flatMap(({ title, alarms }) =>
    alarms
      .filter(({ answer }) => answer === null)
      .map(({ label, words }) => `Open alarm of the rig watch: ${title}, ${label}: ${words}.`),
  )

/** The replicates of a study, and the records that cannot be any. */
export interface StudyReplicates extends Pick<Compared, 'title' | 'records' | 'left'> {
  readonly replicates: readonly Replicate[]
  /** Of the first record of each sample. */
  readonly systems: ReadonlyMap<string, ComparedSystem>
}

/** Gathers what a study's comparison is made of. */
export async function studyReplicates(lab: Lab, study: string, progress?: Progress): Promise<Outcome<StudyReplicates>> {
  const about = await lab.studies.get(study)
  if (!about.ok) return about
  const listed = await listedRecords(lab, { study })
  if (!listed.ok) return listed
  const samples = await lab.samples.list()
  if (!samples.ok) return samples
  const titles = new Map(samples.value.map(({ id, title }) => [id, title]))
  const replicates: Replicate[] = []
  const records: ComparedRecord[] = []
  const left: { name: string; why: string }[] = []
  const systems = new Map<string, ComparedSystem>()
  for (const [place, { record, result }] of listed.value.entries()) {
    progress?.('records', place + 1, listed.value.length)
    if (record.sample === null) left.push({ name: record.name, why: 'nobody says which sample it is of' })
    else if (result === undefined) left.push({ name: record.name, why: 'it is not reduced yet' })
    else {
      const read = await readKept(lab, result)
      if (!read.ok) return read
      const replicate = replicateOf(read.value.reduced, factsOf(record, titles.get(record.sample) ?? record.sample))
      const { raw, setup } = result.origin
      const { id, name } = record
      if (replicate.points.length === 0) left.push({ name, why: 'it has no point that may be used' })
      else {
        const { setup: mounted, reduction } = read.value.reduced
        const { sample } = replicate
        if (!systems.has(sample)) systems.set(sample, systemOf(sample, mounted, reduction))
        replicates.push(replicate)
        records.push({ record: id, name, sample, replicate: record.replicate, raw, setup })
      }
    }
  }
  return done({ title: about.value.title, replicates, records, left, systems })
}

const factsOf = ({ id, name, day, mountedBy, ballSet }: KeptRecord, sample: string) => ({
  ...{ record: id, name, sample },
  blocks: { day, operator: mountedBy, ballSet },
})

/** Removals that name a record by its file or the beginning of its id, as people do. */
const named = (removals: Compared['removals'], records: readonly ComparedRecord[]): Compared['removals'] =>
  removals.map((removal) => ({
    ...removal,
    record:
      records.find(({ record, name }) => name === removal.record || record.startsWith(removal.record))?.record ??
      removal.record,
  }))

const nothingThere = (study: string): Problem => ({
  kind: 'nothingToCompare',
  class: 'badInput',
  place: { name: study },
  what: 'The study has no record that is reduced and belongs to a sample.',
  mend: 'Add records with a setup, and say with "kufe amend" which sample each is of.',
})
