import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { reduceDefaults, reduceRecord } from '../core/reduce/index.ts'
import { done, failed, type Outcome, type Outside, type Problem, type ReduceOptions } from '../core/terms/index.ts'
import { type RawRecord, readRecord, readSetup, type SetupFile } from '../io/index.ts'
import { fileProblem } from './fileProblem.ts'
import { type ReadingArgs, readingOf } from './readingOf.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { sharedBudget } from './sharedBudget.ts'

export interface ReduceFileArgs {
  /** The record. */
  readonly file: string
  /** The setup file. */
  readonly setup: string | undefined
  /** What was said about the record's columns and dialect. */
  readonly reading: ReadingArgs
  /** Options that go before those of the setup. */
  readonly options: Partial<ReduceOptions>
}

/** Reads a setup and a record, and reduces the record to points. All problems of a file at once, those of the setup first. */
export async function reduceFile(args: ReduceFileArgs, outside: Outside): Promise<Outcome<ReducedRecord>> {
  const setup = await readSetupFile(args.setup)
  if (!setup.ok) return setup
  const reading = await readingOf(args.reading, setup.value.columns)
  if (!reading.ok) return reading
  const progress = (share: number, of: number): void => outside.progress('reading', share, of)
  const record = await readRecord(args.file, { ...reading.value, progress })
  if (!record.ok) return record
  try {
    return reduceRead(record.value, { args, setup: setup.value, outside })
  } finally {
    record.value.close()
  }
}

async function readSetupFile(file: string | undefined): Promise<Outcome<SetupFile>> {
  if (file === undefined) return failed(setupMissing)
  try {
    return readSetup(await readFile(file, 'utf8'), basename(file))
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
}

const setupMissing: Problem = {
  kind: 'setupMissing',
  class: 'wrongUse',
  place: {},
  what: 'No setup is given, and the record does not tell what was mounted.',
  mend: 'Name it with --setup FILE; "kufe setup balls-on-plate --out setup.yaml" starts one.',
}

interface Beside {
  readonly args: ReduceFileArgs
  readonly setup: SetupFile
  readonly outside: Outside
}

function reduceRead(record: RawRecord, { args, setup, outside }: Beside): Outcome<ReducedRecord> {
  const options: ReduceOptions = { ...reduceDefaults, ...setup.setup.options, ...args.options }
  const whole = { ...setup.setup, options }
  const file = basename(args.file)
  const reduction = reduceRecord(record.channels, whole)
  if (!reduction.ok) return failed(...reduction.problems.map((problem) => inFile(problem, file)))
  const { rows, columns, dialect, preamble } = record
  return done({
    file,
    read: { rows, columns, dialect, preamble },
    setup: whole,
    options,
    reduction: reduction.value,
    curve: null,
    budget: sharedBudget(reduction.value.points),
    remarks: [...record.remarks, ...reduction.value.remarks],
    origin: {
      raw: record.sha256,
      setup: setup.sha256,
      options: { ...options, columns: columns.map(({ heading, unit, channel }) => ({ heading, unit, channel })) },
      program: outside.program,
      seed: options.seed,
    },
  })
}

const inFile = (problem: Problem, file: string): Problem => ({ ...problem, place: { file, ...problem.place } })
