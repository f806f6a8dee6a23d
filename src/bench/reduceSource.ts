import { reduceDefaults, reduceRecord } from '../core/reduce/index.ts'
import {
  type Channels,
  done,
  failed,
  type Outcome,
  type Outside,
  type Problem,
  type ReduceOptions,
} from '../core/terms/index.ts'
import type { SetupFile } from '../io/setup/index.ts'
import { type RawRecord, readRecord } from '../io/table/index.ts'
import { type Given, givenFromOrigin, givenInOrigin, readingWith } from './given.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import { sharedBudget } from './sharedBudget.ts'

/** A record with everything that decides what becomes of it. */
export interface ReduceSource {
  /** Path of the file, or its bytes. */
  readonly source: string | Uint8Array
  /** Name of the file without its folder. */
  readonly file: string
  readonly setup: SetupFile
  readonly given: Given
}

/** Reads a record and reduces it to points. All problems of the file at once. */
export const reduceSource = (said: ReduceSource, outside: Outside): Promise<Outcome<ReducedRecord>> =>
  lookAtSource(said, outside, (_, reduced) => done(reduced))

/** The same, and then looks at its channels while they can be read. */
export async function lookAtSource<T>(
  said: ReduceSource,
  outside: Outside,
  look: (channels: Channels, reduced: ReducedRecord) => Outcome<T>,
): Promise<Outcome<T>> {
  // As the origin will say it: a recomputation from there must read the record in the same way.
  const from = { ...said, given: givenFromOrigin({ given: givenInOrigin(said.given) }) }
  const progress = (share: number, of: number): void => outside.progress('reading', share, of)
  const reading = readingWith(from.given.reading, from.setup.columns)
  const record = await readRecord(from.source, { ...reading, file: from.file, progress })
  if (!record.ok) return record
  try {
    const reduced = reduceRead(record.value, from, outside)
    return reduced.ok ? look(record.value.channels, reduced.value) : reduced
  } finally {
    record.value.close()
  }
}

function reduceRead(record: RawRecord, { file, setup, given }: ReduceSource, outside: Outside): Outcome<ReducedRecord> {
  const options: ReduceOptions = { ...reduceDefaults, ...setup.setup.options, ...given.options }
  const whole = { ...setup.setup, options }
  const reduction = reduceRecord(record.channels, whole, given.windows)
  if (!reduction.ok) return failed(...reduction.problems.map((problem) => inFile(problem, file)))
  const { rows, columns, dialect, preamble } = record
  const said = givenInOrigin(given)
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
      options: {
        ...options,
        columns: columns.map(({ heading, unit, channel }) => ({ heading, unit, channel })),
        ...(said === undefined ? {} : { given: said }),
      },
      program: outside.program,
      seed: options.seed,
    },
  })
}

const inFile = (problem: Problem, file: string): Problem => ({ ...problem, place: { file, ...problem.place } })
