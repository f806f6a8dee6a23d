import { availableParallelism } from 'node:os'
import type { Command } from 'commander'
import type { AddWords } from '../bench/lab/index.ts'
import type { LabOptions } from './labOptions.ts'
import { type ReadingOptions, readingArgs, reduceOptions } from './readingOptions.ts'
import type { Desk } from './verb.ts'
import { wholeNumber } from './wholeNumber.ts'

/** What may be said about records when they are added. */
export interface AddOptions extends LabOptions, Omit<ReadingOptions, 'svg' | 'palette' | 'strict'> {
  readonly study?: string
  readonly sample?: string
  readonly replicate?: number
  readonly mountedBy?: string
  readonly ballSet?: string
  readonly day?: string
  readonly threads?: number
}

export const addFactOptions = (command: Command): Command =>
  command
    .option('-s, --setup <file>', 'setup of all of them; else each has its own beside it, drawer-b.setup.yaml')
    .optionsGroup('About the records:')
    .option('--study <name>', 'study that they belong to; a new one is made')
    .option('--sample <name>', 'sample that was measured; a new one is made')
    .option('--replicate <number>', 'replicate of the first record; the next ones count up', wholeNumber(1, 1_000_000))
    .option('--mounted-by <initials>', 'who mounted the sample')
    .option('--ball-set <name>', 'balls, pins or rings that were used')
    .option('--day <date>', 'day of the measurement, such as 2026-11-25')
    .optionsGroup('Working:')
    .option('--threads <number>', 'how many threads reduce; as many as there are processors', wholeNumber(0, 64))

/** What the use case wants. */
export const addArgs = (options: AddOptions, desk: Desk): AddWords => ({
  setup: options.setup,
  names: { study: options.study, sample: options.sample },
  replicate: options.replicate,
  facts: { mountedBy: options.mountedBy, ballSet: options.ballSet, day: options.day },
  reading: readingArgs(options, desk),
  options: reduceOptions(options),
  threads: options.threads ?? availableParallelism(),
})
