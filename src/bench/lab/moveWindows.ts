import { done, failed, type MovedWindow, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { type Change, canonicalJson, type KeptRecord, type Lab } from '../../store/index.ts'
import { type Given, givenFromOrigin, nothingGiven } from '../given.ts'
import type { Brief } from './brief.ts'
import { computeKept } from './computeKept.ts'
import { type ComputedResult, computeResult } from './computeResult.ts'
import { firstName } from './firstName.ts'
import { type Mends, mendsFrom, orderedWindows } from './mends.ts'

/** Windows as they shall be, all of them. */
export interface MoveWish {
  readonly record: KeptRecord
  readonly windows: readonly MovedWindow[]
  /** Answered remarks; those of the last version stay where it is left out. */
  readonly answers?: Mends['answers']
  /** The version of the paper that its writer saw; whatever is latest where it is left out. */
  readonly after?: number
}

/** What goes with it. */
export interface MoveHand {
  readonly change: Change
  readonly outside: Outside
  /** False where somebody stopped it; then nothing is kept. */
  readonly mayKeep: () => boolean
}

/** The new version of the paper, and what the record became. */
export interface MovedRecord {
  readonly version: number
  /** undefined where the windows were what they are. */
  readonly brief: Brief | undefined
}

/**
 * Moves windows of a record: it is reduced with them, the result is kept beside the old ones, and a new version of its
 * paper of mends says which windows count. Nothing changes where it cannot be reduced with them.
 */
export async function moveWindows(lab: Lab, wish: MoveWish, hand: MoveHand): Promise<Outcome<MovedRecord>> {
  const { record, after } = wish
  const { change, outside, mayKeep } = hand
  const place = { subject: 'record', subjectId: record.id, kind: 'mends' } as const
  const paper = await lab.paper(place)
  if (!paper.ok) return paper
  const latest = paper.value?.version ?? 0
  if (after !== undefined && after !== latest) return failed(supersededMends)
  const windows = orderedWindows(wish.windows)
  const said = mendsFrom(paper.value?.content)
  const content = { windows, answers: wish.answers ?? said.answers }
  if (latest > 0 && canonicalJson(content) === canonicalJson(paper.value?.content)) {
    return done({ version: latest, brief: undefined }) // the same again changes nothing
  }
  const same = canonicalJson(said.windows) === canonicalJson(windows)
  const result = same ? done(undefined) : await reducedWith(lab, { record, windows }, outside)
  if (!result.ok) return result
  if (!mayKeep()) return failed(supersededMends)
  if (result.value !== undefined) {
    const { kind, origin, text } = result.value
    // The result first: a stop in between leaves one too many, which counts only once the paper asks for it.
    const kept = await lab.results.add([{ kind, origin, text }], change)
    if (!kept.ok) return kept
  }
  const end = await lab.keepPaper({ ...place, content, after: latest }, change)
  if (!end.ok) return end
  if (end.value.end !== 'kept') return failed(supersededMends)
  return done({ version: end.value.paper.version, brief: result.value?.brief })
}

/** Reduces and fits a record with windows moved; what was said about its table is said again. */
async function reducedWith(
  lab: Lab,
  { record, windows }: Pick<MoveWish, 'record' | 'windows'>,
  outside: Outside,
): Promise<Outcome<ComputedResult>> {
  const given = await givenOf(lab, record)
  if (!given.ok) return given
  const file = await firstName(lab, record)
  if (!file.ok) return file
  const task = {
    ...{ record, file: file.value, setup: record.setup, program: outside.program },
    given: { ...given.value, windows: windows.length === 0 ? undefined : windows },
    kind: 'fit',
  } as const
  return computeKept(lab, task, { compute: (one) => computeResult(one, outside.progress) })
}

/** What was said about the table beside the setup of the record; windows are said anew. */
async function givenOf(lab: Lab, record: KeptRecord): Promise<Outcome<Given>> {
  const results = await lab.results.list({ record: record.id })
  if (!results.ok) return results
  const last = results.value.findLast(({ origin }) => origin.setup === record.setup)
  return done(last === undefined ? nothingGiven : givenFromOrigin(last.origin.options))
}

/** Somebody moved windows in between. */
const supersededMends: Problem = {
  kind: 'superseded',
  class: 'wrongUse',
  place: { name: 'mends' },
  what: 'Somebody else moved windows of this record in between.',
  mend: 'Look at theirs, then move yours again.',
}
