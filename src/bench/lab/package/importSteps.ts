import { done, failed, type Outcome, type Problem, type Sha256 } from '../../../core/terms/index.ts'
import type { PackagedLab, PackageTitled } from '../../../io/dataPackage/index.ts'
import {
  type Change,
  type HistoryEntry,
  type Lab,
  type NewRecord,
  type NewResult,
  type PaperKind,
  type PaperPlace,
  paperId,
  paperKinds,
  resultKinds,
  type TitledThings,
} from '../../../store/index.ts'

/** One line of the history that a package brings, and how it is made to happen again. */
export interface ImportStep {
  readonly entry: HistoryEntry
  readonly deed: ImportDeed
}

/** Records and results can be kept many at once; all else happens one by one. */
export type ImportDeed =
  | { readonly kind: 'record'; readonly record: () => Promise<NewRecord> }
  /** `sha256` of its text, for a lab that has a result of the same origin. */
  | { readonly kind: 'result'; readonly sha256: Sha256; readonly result: () => Promise<NewResult> }
  | { readonly kind: 'other'; readonly act: (lab: Lab) => Promise<Outcome<unknown>> }

/** All that happened in the lab of a package, in its order; replayed in an empty lab it gives that lab. */
export function importSteps(packaged: PackagedLab): Outcome<readonly ImportStep[]> {
  const problems = unusable(packaged)
  if (problems.length > 0) return failed(...problems)
  const steps = [
    ...packaged.about.map((one) => titledStep('lab', one, (lab) => ({ add: refuseLab, correct: lab.about.correct }))),
    ...packaged.studies.map((one) => titledStep('study', one, (lab) => lab.studies)),
    ...packaged.samples.map((one) => titledStep('sample', one, (lab) => lab.samples)),
    ...setupSteps(packaged),
    ...recordSteps(packaged),
    ...resultSteps(packaged),
    ...paperSteps(packaged),
  ]
  return done(steps.sort((a, b) => a.entry.change.number - b.entry.change.number))
}

type Kind = HistoryEntry['kind']

const entryOf = (
  kind: Kind,
  id: string,
  { version, change }: { version: number | null; change: Change & { number: number } },
): HistoryEntry => ({
  what: version === null || version === 1 ? 'created' : 'corrected',
  ...{ kind, id, version },
  change: { number: change.number, at: change.at, who: change.who, why: change.why },
})

/** The lab itself is made when the package is taken in, by whoever opens it. */
const refuseLab = (): never => {
  throw new RangeError('the lab is made before its steps')
}

function titledStep(
  kind: 'lab' | 'study' | 'sample',
  { id, version, supersedes, title, note, facts, change }: PackageTitled,
  things: (lab: Lab) => Pick<TitledThings, 'add' | 'correct'>,
): ImportStep {
  const said = { title, note, facts }
  const act = (lab: Lab): Promise<Outcome<unknown>> =>
    supersedes === null
      ? things(lab).add({ id, ...said }, change)
      : things(lab).correct(id, said, { ...change, supersedes })
  return { entry: entryOf(kind, id, { version, change }), deed: { kind: 'other', act } }
}

const setupSteps = ({ setups }: PackagedLab): ImportStep[] =>
  setups.map(({ sha256, text, change }) => ({
    entry: entryOf('setup', sha256, { version: null, change }),
    deed: { kind: 'other', act: (lab) => lab.setups.add(text, change) },
  }))

const recordSteps = ({ records }: PackagedLab): ImportStep[] =>
  records.flatMap(({ id, versions, bytes }) =>
    versions.map(({ version, supersedes, change, ...facts }): ImportStep => {
      const entry = entryOf('record', id, { version, change })
      if (supersedes === null) {
        return { entry, deed: { kind: 'record', record: async () => ({ ...facts, bytes: await bytes() }) } }
      }
      const act = (lab: Lab) => lab.records.correct(id, facts, { ...change, supersedes })
      return { entry, deed: { kind: 'other', act } }
    }),
  )

const resultSteps = ({ results }: PackagedLab): ImportStep[] =>
  results.map(({ id, kind: called, origin, sha256, change, text }) => {
    const kind = resultKinds.find((known) => known === called) ?? 'fit' // refused before where it is another
    return {
      entry: entryOf('result', id, { version: null, change }),
      deed: { kind: 'result', sha256, result: async () => ({ kind, origin, text: await text() }) },
    }
  })

const paperSteps = ({ papers }: PackagedLab): ImportStep[] =>
  papers.flatMap(({ subject: about, subjectId, kind: called, name, version, content, change }) => {
    const place = knownPlace(about, called)
    if (place === undefined) return [] // refused before
    const paper = { ...place, subjectId, name }
    const act = async (lab: Lab): Promise<Outcome<unknown>> => {
      const kept = await lab.keepPaper({ ...paper, content, after: version - 1 }, change)
      return kept.ok && kept.value.end === 'superseded' ? failed(otherVersion(paperId(paper), version)) : kept
    }
    return [{ entry: entryOf('paper', paperId(paper), { version, change }), deed: { kind: 'other', act } }]
  })

/** The two words where they are ones that the store knows. */
function knownPlace(about: string, called: string): Pick<PaperPlace, 'subject' | 'kind'> | undefined {
  for (const kind of Object.keys(paperKinds) as PaperKind[]) {
    const subject = paperKinds[kind].find((one) => one === about)
    if (kind === called && subject !== undefined) return { subject, kind }
  }
  return undefined
}

const otherVersion = (id: string, version: number): Problem => ({
  kind: 'changedMeanwhile',
  class: 'store',
  place: { name: 'paper', cell: id },
  what: `The lab has another version ${version} of ${id} already.`,
  mend: 'Take the package into a lab of its own, and compare the two.',
})

/** What the schema of a package lets through and no lab takes. */
function unusable({ about, studies, samples, records, results, papers }: PackagedLab): Problem[] {
  const versions = records.flatMap((record) => record.versions)
  const whos = [about, studies, samples, versions, results, papers].flat().map(({ change }) => change.who)
  return [
    ...whos.filter((who) => who.trim() === '').map(() => problem('somebody without a name')),
    ...versions
      .filter(({ replicate }) => replicate !== null && !(Number.isInteger(replicate) && replicate >= 1))
      .map(({ replicate }) => problem(`replicate ${replicate}`)),
    ...results
      .filter(({ kind }) => !resultKinds.some((known) => known === kind))
      .map(({ kind }) => problem(`a result of the kind "${kind.slice(0, 40)}"`)),
    ...results
      .filter(({ origin }) => !Number.isSafeInteger(origin.seed))
      .map(({ origin }) => problem(`the seed ${origin.seed}`)),
    ...papers
      .filter(({ subject, kind }) => knownPlace(subject, kind) === undefined)
      .map(({ subject, kind }) => problem(`a paper "${kind.slice(0, 40)}" about a ${subject}`)),
    ...papers
      .filter(({ subject, subjectId }) => subject === 'lab' && subjectId !== 'lab')
      .map(({ subjectId }) => problem(`a paper about the lab "${subjectId.slice(0, 40)}"`)),
  ]
}

const problem = (thing: string): Problem => ({
  kind: 'packageUnusable',
  class: 'badInput',
  place: { file: 'lab.json' },
  what: `The package names ${thing}, which no lab can hold.`,
  mend: 'Ask for another copy of the package, or for one that a newer program made.',
})
