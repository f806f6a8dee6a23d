import { done, failed, type MovedWindow, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import { readSetup } from '../../io/index.ts'
import type { Change, KeptRecord, Lab, RecordFacts } from '../../store/index.ts'
import { keepAnswers, readAnswersFile } from './answers.ts'
import type { Brief } from './brief.ts'
import { inLab } from './inLab.ts'
import { changeNow, type LabCall } from './labCall.ts'
import { wantedWindows } from './mends.ts'
import { type MovedRecord, moveWindows } from './moveWindows.ts'
import { namedRecord } from './named.ts'
import { idsOf, makeNamed, type Names } from './namedThings.ts'
import { keepReduced, reduceAnew } from './reduceAnew.ts'
import { readSetupText, type SetupText } from './setupFiles.ts'

type Facts = Partial<Pick<RecordFacts, 'study' | 'sample' | 'replicate' | 'mountedBy' | 'ballSet' | 'day' | 'setup'>>

export interface AmendArgs {
  /** Names the record. */
  readonly word: string
  /** File with the setup that is right; undefined leaves it. */
  readonly setup?: string
  /** The text of it, where it is no file. */
  readonly setupText?: string
  /** Windows of steps as they shall be; those of other steps stay. `own` puts back what the program chose for all of them. */
  readonly windows?: readonly MovedWindow[] | 'own'
  /** File with the filled run sheet of the record. */
  readonly answers?: string
  readonly names: Names
  readonly facts: Omit<Facts, 'study' | 'sample' | 'setup'>
}

export interface Amended {
  readonly before: KeptRecord
  /** The same version where nothing differed. */
  readonly after: KeptRecord
  /** Of the result with the setup that was named; undefined where the setup stays. */
  readonly brief: Brief | undefined
  /** Version of the paper that says which windows count; undefined where none were named. */
  readonly windows: number | undefined
  /** Version of the filled run sheet that was named; undefined where none was. */
  readonly answers: { readonly version: number; readonly isNew: boolean } | undefined
}

/**
 * Corrects what is said about a record: a new version that supersedes the last. With another setup the record is reduced
 * first, and nothing changes where it cannot be. Doing the same again changes nothing more.
 */
export async function amendRecord(args: AmendArgs, call: LabCall, outside: Outside): Promise<Outcome<Amended>> {
  if (call.why.trim() === '') return failed(withoutReason)
  const ids = idsOf(args.names)
  if (!ids.ok) return ids
  const setup = setupIn(args)
  if (!setup.ok) return setup
  const filled = args.answers === undefined ? done(undefined) : readAnswersFile(args.answers)
  if (!filled.ok) return filled
  return inLab(call, outside, async (lab): Promise<Outcome<Amended>> => {
    const found = await namedRecord(lab, args.word)
    if (!found.ok) return found
    const before = found.value
    const change = changeNow(call, outside)
    // The result first: a stop in between leaves one too many, never a record without one.
    const anew =
      setup.value === undefined ? done(undefined) : await reduceAnew({ lab, record: before }, setup.value, outside)
    if (!anew.ok) return anew
    const kept = anew.value === undefined ? done(null) : await keepReduced(lab, anew.value, change)
    if (!kept.ok) return kept
    const facts = { ...args.facts, ...ids.value, setup: setup.value?.sha256 }
    const after = await corrected(lab, { before, facts, names: args.names, change })
    if (!after.ok) return after
    const moved = await movedTo(lab, { record: after.value, windows: args.windows, change }, outside)
    if (!moved.ok) return moved
    const sheet = { record: before.id, filled: filled.value, change }
    const answers =
      sheet.filled === undefined ? done(undefined) : await keepAnswers(lab, { ...sheet, filled: sheet.filled })
    if (!answers.ok) return answers
    return done({
      before,
      after: after.value,
      brief: moved.value?.brief ?? anew.value?.result.brief,
      windows: moved.value?.version,
      answers: answers.value,
    })
  })
}

function setupIn({ setup, setupText }: AmendArgs): Outcome<SetupText | undefined> {
  if (setup !== undefined) return readSetupText(setup)
  if (setupText === undefined) return done(undefined)
  const read = readSetup(setupText, 'setup')
  return read.ok ? done({ ...read.value, text: setupText }) : read
}

interface Moving {
  readonly record: KeptRecord
  readonly windows: AmendArgs['windows']
  readonly change: Change
}

/** Windows of a step that is named anew go; the others stay. */
const windowsTogether = (before: readonly MovedWindow[], anew: readonly MovedWindow[]): readonly MovedWindow[] => [
  ...before.filter(({ step }) => !anew.some((window) => window.step === step)),
  ...anew,
]

/** After the setup: what a step is hangs on it. */
async function movedTo(
  lab: Lab,
  { record, windows, change }: Moving,
  outside: Outside,
): Promise<Outcome<MovedRecord | undefined>> {
  if (windows === undefined) return done(undefined)
  const before = await wantedWindows(lab, record.id)
  if (!before.ok) return before
  const wanted = windows === 'own' ? [] : windowsTogether(before.value, windows)
  return moveWindows(lab, { record, windows: wanted }, { change, outside, mayKeep: () => true })
}

interface Correcting {
  readonly before: KeptRecord
  readonly facts: Facts
  readonly names: Names
  readonly change: Change
}

async function corrected(lab: Lab, { before, facts, names, change }: Correcting): Promise<Outcome<KeptRecord>> {
  const differing = Object.entries(facts).filter(
    ([name, fact]) => fact !== undefined && fact !== before[name as keyof Facts], // `facts` has no other names
  )
  if (differing.length === 0) return done(before)
  const named = await makeNamed(lab, names, change)
  if (!named.ok) return named
  return lab.records.correct(before.id, Object.fromEntries(differing), { ...change, supersedes: before.version })
}

const withoutReason: Problem = {
  kind: 'reasonMissing',
  class: 'wrongUse',
  place: { name: 'why' },
  what: 'A correction needs a reason.',
  mend: 'Say in a few words why it is corrected: --why "the other balls were mounted".',
}
