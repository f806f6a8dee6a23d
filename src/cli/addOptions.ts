import { availableParallelism } from 'node:os'
import type { Command } from 'commander'
import type { AddWords } from '../bench/lab/index.ts'
import { addChangeOptions, addLabOption, type LabOptions } from './labOptions.ts'
import { type ReadingOptions, readingArgs, reduceOptions } from './readingOptions.ts'
import type { Desk } from './verb.ts'
import { wholeNumber } from './wholeNumber.ts'

/** What may be said about a record. */
export interface FactOptions {
  readonly study?: string
  readonly sample?: string
  readonly replicate?: number
  readonly mountedBy?: string
  readonly ballSet?: string
  readonly day?: string
}

/** Options of the verbs that add records. */
export interface AddOptions extends LabOptions, FactOptions, Omit<ReadingOptions, 'svg' | 'palette' | 'strict'> {
  readonly threads?: number
}

/** Where records go, with which setup, by whom and with how many threads. */
export function addPlaceOptions(command: Command): Command {
  addLabOption(command).option(
    '-s, --setup <file>',
    'setup of all of them; else each has its own beside it, drawer-b.setup.yaml',
  )
  return addThreadsOption(addChangeOptions(command))
}

export const addThreadsOption = (command: Command): Command =>
  command.option(
    '--threads <number>',
    'how many threads compute; as many as processors if left out',
    wholeNumber(0, 64),
  )

/** How many threads compute. */
export const threadsOf = ({ threads }: { readonly threads?: number }): number => threads ?? availableParallelism()

export const addFactOptions = (command: Command): Command =>
  command
    .optionsGroup('About the records:')
    .option('--study <name>', 'study that they belong to; a new one is made')
    .option('--sample <name>', 'sample that was measured; a new one is made')
    .option('--mounted-by <initials>', 'who mounted the sample')
    .option('--ball-set <name>', 'balls, pins or rings that were used')
    .option('--day <date>', 'day of the measurement, such as 2026-11-25')

/** In words for the verb: `replicate of the first record; the next ones count up`. */
export const addReplicateOption = (command: Command, words: string): Command =>
  command.option('--replicate <number>', words, wholeNumber(1, 1_000_000))

/** What the use case wants. */
export const addArgs = (options: AddOptions, desk: Desk): AddWords => ({
  setup: options.setup,
  names: { study: options.study, sample: options.sample },
  replicate: options.replicate,
  facts: { mountedBy: options.mountedBy, ballSet: options.ballSet, day: options.day },
  reading: readingArgs(options, desk),
  options: reduceOptions(options),
  threads: threadsOf(options),
})
