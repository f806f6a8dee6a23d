import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import {
  type Channels,
  done,
  failed,
  type Outcome,
  type Outside,
  type Problem,
  type ReduceOptions,
} from '../core/terms/index.ts'
import { readSetup, type SetupFile } from '../io/setup/index.ts'
import { fileProblem } from './fileProblem.ts'
import { type ReadingArgs, readingOf } from './readingOf.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { lookAtSource } from './reduceSource.ts'

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
export const reduceFile = (args: ReduceFileArgs, outside: Outside): Promise<Outcome<ReducedRecord>> =>
  lookAtFile(args, outside, (_, reduced) => done(reduced))

/** The same, and then looks at the channels of the record while they can be read. */
export async function lookAtFile<T>(
  args: ReduceFileArgs,
  outside: Outside,
  look: (channels: Channels, reduced: ReducedRecord) => Outcome<T>,
): Promise<Outcome<T>> {
  const setup = await readSetupFile(args.setup)
  if (!setup.ok) return setup
  const reading = await readingOf(args.reading, setup.value.columns)
  if (!reading.ok) return reading
  const given = { reading: reading.value, options: args.options }
  return lookAtSource({ source: args.file, file: basename(args.file), setup: setup.value, given }, outside, look)
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
