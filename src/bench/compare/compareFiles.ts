import { basename } from 'node:path'
import { type ComparedSystem, compareSamples, type Replicate } from '../../core/decide/index.ts'
import { done, failed, type Outcome, type Outside, type Problem, type ReduceOptions } from '../../core/terms/index.ts'
import { systemOf } from '../decide/comparable/holdSystems.ts'
import { setupFinder } from '../lab/setupFiles.ts'
import { type ReadingArgs, readingOf } from '../readingOf.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { reduceSource } from '../reduceSource.ts'
import { cautionsOf } from './cautionsOf.ts'
import type { Compared, ComparedRecord } from './compared.ts'
import { type CompareWords, compareAsk } from './compareWords.ts'
import { replicateOf } from './replicateOf.ts'
import { type SampleFile, sampleFiles } from './sampleFiles.ts'

export interface CompareFilesArgs {
  /** Files, patterns or folders, each with its sample before it: `A=runs/a-*.csv`. */
  readonly words: readonly string[]
  /** Setup of all; the one beside each record where left out. */
  readonly setup: string | undefined
  readonly reading: ReadingArgs
  readonly options: Partial<ReduceOptions>
  readonly ask: CompareWords
}

/** Reduces records and holds their samples against each other. All problems of all files at once. */
export async function compareFiles(args: CompareFilesArgs, outside: Outside): Promise<Outcome<Compared>> {
  const ask = compareAsk(args.ask)
  const files = sampleFiles(args.words)
  if (!ask.ok || !files.ok) return failed(...problemsOf(ask), ...problemsOf(files))
  const reduced = await reduceEach(files.value, args, outside)
  if (!reduced.ok) return reduced
  const { replicates, records, systems } = reduced.value
  const comparison = compareSamples(replicates, ask.value)
  if (!comparison.ok) return comparison
  const title = [...new Set(records.map(({ sample }) => sample))].join(' against ')
  const removals = ask.value.removals ?? []
  const cautions = cautionsOf(systems)
  return done({
    title,
    records,
    left: [],
    removals,
    cautions,
    alarms: [],
    comparison: comparison.value,
    program: outside.program,
  })
}

const problemsOf = (outcome: Outcome<unknown>): readonly Problem[] => (outcome.ok ? [] : outcome.problems)

interface Reduced {
  readonly replicates: readonly Replicate[]
  readonly records: readonly ComparedRecord[]
  /** Of the first record of each sample. */
  readonly systems: ReadonlyMap<string, ComparedSystem>
}

async function reduceEach(
  files: readonly SampleFile[],
  args: CompareFilesArgs,
  outside: Outside,
): Promise<Outcome<Reduced>> {
  const setupOf = setupFinder(args.setup)
  const problems: Problem[] = []
  const replicates: Replicate[] = []
  const records: ComparedRecord[] = []
  const counts = new Map<string, number>()
  const systems = new Map<string, ComparedSystem>()
  for (const [place, { file, sample: said }] of files.entries()) {
    const reduced = await reduceOne(file, { setupOf, args, outside: { ...outside, progress: () => {} } })
    outside.progress('records', place + 1, files.length)
    if (!reduced.ok) {
      problems.push(...reduced.problems)
      continue
    }
    const sample = said ?? reduced.value.setup.run.sample
    if (sample === undefined) {
      problems.push(sampleUnknown(file))
      continue
    }
    const record = basename(file)
    const replicate = (counts.get(sample) ?? 0) + 1
    counts.set(sample, replicate)
    const { setup: mounted, reduction } = reduced.value
    if (!systems.has(sample)) systems.set(sample, systemOf(sample, mounted, reduction))
    const { operator } = reduced.value.setup.run
    const blocks = { day: null, operator: operator ?? null, ballSet: null }
    replicates.push(replicateOf(reduced.value, { ...{ record, name: record, sample }, blocks }))
    const { raw, setup } = reduced.value.origin
    records.push({ record, name: record, sample, replicate, raw, setup })
  }
  return problems.length > 0 ? failed(...problems) : done({ replicates, records, systems })
}

interface Reducing {
  readonly setupOf: ReturnType<typeof setupFinder>
  readonly args: CompareFilesArgs
  readonly outside: Outside
}

async function reduceOne(file: string, { setupOf, args, outside }: Reducing): Promise<Outcome<ReducedRecord>> {
  const setup = setupOf(file)
  if (!setup.ok) return setup
  const reading = await readingOf(args.reading, setup.value.columns)
  if (!reading.ok) return reading
  const given = { reading: reading.value, options: args.options }
  return reduceSource({ source: file, file: basename(file), setup: setup.value, given }, outside)
}

const sampleUnknown = (file: string): Problem => ({
  kind: 'sampleUnknown',
  class: 'wrongUse',
  place: { file },
  what: 'Nobody says which sample this record is of.',
  mend: 'Write "NAME=FILE", or put "sample" under "run" in its setup.',
})
