import { createReadStream } from 'node:fs'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import { readSetup } from '../../../io/index.ts'
import type { KeptRecord, Lab, RecordFacts } from '../../../store/index.ts'
import type { Given } from '../../given.ts'
import { type ComputedResult, computeResult } from '../../lab/computeResult.ts'
import { currentResult } from '../../lab/currentResult.ts'
import { inLab } from '../../lab/inLab.ts'
import { changeNow, type LabCall } from '../../lab/labCall.ts'
import { idsOf, makeNamed, type Names } from '../../lab/namedThings.ts'
import type { ReadingWords } from './lookAtUpload.ts'

/** What is said about an upload that is to be kept. Plain data: it is remembered until all of it is done. */
export interface KeepWords {
  readonly reading: ReadingWords
  /** Text of a setup, or the id of one that the lab has. */
  readonly setup: string
  readonly names: Names
  readonly facts: Pick<Partial<RecordFacts>, 'replicate' | 'mountedBy' | 'ballSet' | 'day'>
  readonly by: string
  readonly why: string
}

/** The file, and what is said about it. */
export interface KeepUpload {
  readonly file: string
  readonly name: string
  readonly words: KeepWords
}

/** A record that is kept and reduced; `known` where the lab had its bytes before. */
export interface KeptUpload {
  readonly record: string
  readonly known: boolean
}

/** What a job that may be stopped works with; see `TaskDesk` of the server. */
export interface StoppableDesk {
  readonly call: LabCall
  readonly outside: Outside
  readonly mayKeep: () => boolean
}

/**
 * Reduces and fits a file, and keeps it as a record with its result when that went well: where something stands in the way,
 * or somebody stops it before, nothing is kept. The same bytes are the same record; doing it again gives the same lab.
 */
export const keepUpload = ({ file, name, words }: KeepUpload, desk: StoppableDesk): Promise<Outcome<KeptUpload>> => {
  const { call, outside, mayKeep } = desk
  return inLab(call, outside, async (lab): Promise<Outcome<KeptUpload>> => {
    const ids = idsOf(words.names)
    if (!ids.ok) return ids
    const setup = await setupOf(lab, words.setup)
    if (!setup.ok) return setup
    const given: Given = { reading: words.reading, options: {} }
    const task = {
      source: file,
      file: name,
      setupText: setup.value,
      given,
      kind: 'fit',
      program: outside.program,
    } as const
    const result = await computeResult(task, outside.progress)
    if (!result.ok) return result
    if (!mayKeep()) return failed(stopped)
    outside.progress('keeping', 0, 1)
    const change = changeNow({ ...call, who: words.by, why: words.why }, outside)
    const named = await makeNamed(lab, words.names, change)
    if (!named.ok) return named
    const facts = { ...words.facts, ...ids.value }
    return keepBoth(lab, { file, name, facts, setupText: setup.value, result: result.value, change })
  })
}

interface Keeping {
  readonly file: string
  readonly name: string
  readonly facts: Partial<RecordFacts>
  readonly setupText: string
  readonly result: ComputedResult
  readonly change: ReturnType<typeof changeNow>
}

async function keepBoth(lab: Lab, keeping: Keeping): Promise<Outcome<KeptUpload>> {
  const { file, name, facts, setupText, result, change } = keeping
  const setup = await lab.setups.add(setupText, change)
  if (!setup.ok) return setup
  const bytes = createReadStream(file, { highWaterMark: 1 << 20 })
  const added = await lab.records.add([{ ...facts, name, bytes, setup: result.origin.setup }], change)
  if (!added.ok) return added
  const { record, isNew } = added.value[0]
  const due = isNew ? done(true) : await isResultDue(lab, record, result)
  if (!due.ok) return due
  if (due.value) {
    const { kind, origin, text } = result
    const kept = await lab.results.add([{ kind, origin, text }], change)
    if (!kept.ok) return kept
  }
  return done({ record: record.id, known: !isNew })
}

/** A record that the lab knows keeps its result; one that was kept and not reduced before a stop still gets it. */
async function isResultDue(lab: Lab, record: KeptRecord, { origin }: ComputedResult): Promise<Outcome<boolean>> {
  if (record.setup !== origin.setup) return done(false)
  const current = await currentResult(lab, record)
  return current.ok ? done(current.value === undefined) : current
}

async function setupOf(lab: Lab, said: string): Promise<Outcome<string>> {
  if (/^[0-9a-f]{64}$/.test(said)) {
    const kept = await lab.setups.get(said)
    return kept.ok ? done(kept.value.text) : kept
  }
  const read = readSetup(said, 'setup')
  return read.ok ? done(said) : read
}

/** Nobody hears it: whoever stopped the job knows. */
const stopped: Problem = {
  kind: 'stopped',
  class: 'wrongUse',
  place: {},
  what: 'The job was stopped, and nothing was kept.',
  mend: 'Begin it again.',
}
