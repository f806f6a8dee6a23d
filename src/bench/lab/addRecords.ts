import {
  type AnsweredSheet,
  done,
  failed,
  type Outcome,
  type Outside,
  type ReduceOptions,
  type Sha256,
} from '../../core/terms/index.ts'
import type { RecordFacts } from '../../store/index.ts'
import type { Given } from '../given.ts'
import { type ReadingArgs, readingOf } from '../readingOf.ts'
import type { OnAdd } from './addEvents.ts'
import { keepAnswers, readAnswersFile } from './answers.ts'
import { inLab } from './inLab.ts'
import { type Keeping, keepFiles } from './keepFiles.ts'
import { changeNow, type LabCall } from './labCall.ts'
import { idsOf, type Names } from './namedThings.ts'
import type { FileToKeep } from './readyFile.ts'
import { recordFiles } from './recordFiles.ts'
import { reduceKept } from './reduceKept.ts'
import { readSetupText, setupFinder } from './setupFiles.ts'

/** What is said about records that are added, and how they are to be read and reduced. */
export interface AddWords {
  /** Setup file for all of them; without it each has its own beside it. */
  readonly setup?: string
  readonly names: Names
  /** Of the first record; the next ones count up. */
  readonly replicate?: number
  readonly facts: Pick<Partial<RecordFacts>, 'mountedBy' | 'ballSet' | 'day'>
  readonly reading: ReadingArgs
  readonly options: Partial<ReduceOptions>
  /** Threads that reduce beside this one. */
  readonly threads: number
}

export interface AddArgs extends AddWords {
  /** Files and folders. */
  readonly paths: readonly string[]
  /** File with the filled run sheet, where there is one record. */
  readonly answers?: string
}

export interface Added {
  /** Files in folders that do not look like records by their names. */
  readonly aside: number
}

/**
 * Adds records to a lab: first all of them are kept, then they are reduced and fitted. Whatever is told by `onAdd` is
 * certain. Doing the same again after any stop goes on where it stopped and gives the same lab.
 */
export async function addRecords(
  args: AddArgs,
  call: LabCall,
  on: { readonly outside: Outside; readonly onAdd: OnAdd },
): Promise<Outcome<Added>> {
  const { outside, onAdd } = on
  const words = await addWords(args)
  if (!words.ok) return words
  const { files, aside, problems } = recordFiles(args.paths)
  for (const problem of problems) onAdd({ what: 'refused', file: problem.place.file ?? '', problems: [problem] })
  if (files.length === 0 && problems.length === 0) return failed(nothingFound(args.paths, aside))
  const filled = answersFor(args.answers, files)
  if (!filled.ok) return filled
  return inLab(call, outside, async (lab) => {
    const keeping: Keeping = { lab, call, given: words.value, names: args.names, outside, onAdd }
    const kept: Sha256[] = []
    const noting: Keeping = {
      ...keeping,
      onAdd: (event) => {
        if (event.what === 'kept' || event.what === 'known') kept.push(event.record.id)
        onAdd(event)
      },
    }
    const reduced = await addFiles(files, args, noting)
    if (!reduced.ok) return reduced
    if (filled.value !== undefined && kept.length === 1) {
      const sheet = { record: kept[0], filled: filled.value, change: changeNow(call, outside) }
      const answers = await keepAnswers(lab, sheet)
      if (!answers.ok) return answers
    }
    return done({ aside })
  })
}

/** What was said, all of it understood; a wrong setup for all is told once and before anything happens. */
export async function addWords({ setup, names, reading, options }: AddWords): Promise<Outcome<Given>> {
  const ids = idsOf(names)
  if (!ids.ok) return ids
  const read = setup === undefined ? done(undefined) : readSetupText(setup)
  if (!read.ok) return read
  const said = await readingOf(reading, read.value?.columns ?? {})
  return said.ok ? done({ reading: said.value, options }) : said
}

/** Keeps and reduces these files in a lab that is open. */
export async function addFiles(files: readonly string[], words: AddWords, keeping: Keeping): Promise<Outcome<null>> {
  const ids = idsOf(words.names)
  if (!ids.ok) return ids
  const setupOf = setupFinder(words.setup)
  const first = words.replicate
  const toKeep = files.map((file, i): FileToKeep => {
    const replicate = first === undefined ? null : first + i
    return { file, setup: setupOf(file), facts: { ...words.facts, ...ids.value, replicate } }
  })
  const kept = await keepFiles(toKeep, keeping)
  return kept.ok ? reduceKept(kept.value, keeping, words.threads) : kept
}

/** The filled run sheet; a sheet belongs to one record. */
function answersFor(answers: string | undefined, files: readonly string[]): Outcome<AnsweredSheet | undefined> {
  if (answers === undefined) return done(undefined)
  if (files.length === 1) return readAnswersFile(answers)
  return failed({
    kind: 'answersForOne',
    class: 'wrongUse',
    place: { file: answers },
    what: `A run sheet belongs to one record, and here are ${files.length}.`,
    mend: 'Add the records one by one, or attach their sheets afterwards: kufe amend RECORD --answers FILE --why "…".',
  })
}

const nothingFound = (paths: readonly string[], aside: number) => ({
  kind: 'nothingToAdd',
  class: 'badInput' as const,
  place: { file: paths.join(', ') },
  what: `No record is here${aside > 0 ? `, only ${aside} files that do not look like one by their names` : ''}.`,
  mend: 'Name another folder, or name the file itself: then it is tried whatever it is called.',
})
