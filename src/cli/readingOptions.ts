import { type Command, Option } from 'commander'
import type { ReduceFileArgs } from '../bench/index.ts'
import { keptMappings } from './keptMappings.ts'
import type { Desk } from './verb.ts'
import { wholeNumber } from './wholeNumber.ts'

const segmentations = { auto: 'auto', 'step-column': 'stepColumn', plateaus: 'plateaus', ramp: 'ramp' } as const
const separators = { comma: ',', semicolon: ';', tab: '\t', bar: '|', blank: ' ' } as const
const decimalMarks = { point: '.', comma: ',' } as const
const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const

/** Options of every verb that reads a record, as the command line gives them. */
export interface ReadingOptions {
  readonly setup?: string
  readonly unit?: readonly string[]
  readonly column?: readonly string[]
  readonly mapping?: string
  readonly saveMapping?: string
  readonly separator?: keyof typeof separators
  readonly decimal?: keyof typeof decimalMarks
  readonly encoding?: (typeof encodings)[number]
  readonly sheet?: string
  readonly segmentation?: keyof typeof segmentations
  readonly draws?: number
  readonly seed?: number
  readonly json?: true
  readonly svg?: string
  readonly palette: 'light' | 'dark' | 'print'
  readonly strict?: true
}

export function addReadingOptions(command: Command): Command {
  command
    .argument('<file>', 'the record: text, .xlsx or Parquet')
    .option('-s, --setup <file>', 'what the record does not tell: rig, fixture, pair (see "kufe setup")')
  return addAnswerOptions(command)
}

/** The same for verbs that take several records. */
export function addManyReadingOptions(command: Command): Command {
  command
    .argument('<files...>', 'the records, in the order in which they were measured')
    .option('-s, --setup <file>', 'setup of all records; NAME.setup.yaml beside each NAME if left out')
  return addAnswerOptions(command)
}

function addAnswerOptions(command: Command): Command {
  return addReduceOptions(addTableOptions(command))
    .optionsGroup('Answer:')
    .option('--json', 'answer for machines: JSON in SI units on standard output')
    .option('--svg <file>', 'draw the curve into this file')
    .addOption(choice('--palette <name>', 'colours of the drawing', ['light', 'dark', 'print']).default('light'))
    .option('--strict', 'answer 1 where a value must not be used or no speed can be believed')
}

const choice = (flags: string, about: string, choices: readonly string[]): Option =>
  new Option(flags, about).choices([...choices])

/** How a table is written and what its columns hold. */
export function addTableOptions(command: Command): Command {
  const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
  return command
    .optionsGroup('Reading the record:')
    .option('-u, --unit <heading=unit>', 'unit of a column, where the file has none; may be repeated', several)
    .option('-c, --column <heading=channel>', 'what a column holds, or "none"; may be repeated', several)
    .option('--mapping <name>', 'read columns, units and dialect as kept under this name')
    .option('--save-mapping <name>', 'keep columns, units and dialect under this name for next time')
    .addOption(choice('--separator <name>', 'what stands between cells', Object.keys(separators)))
    .addOption(choice('--decimal <name>', 'decimal mark', Object.keys(decimalMarks)))
    .addOption(choice('--encoding <name>', 'how bytes stand for letters', encodings))
    .option('--sheet <name>', 'sheet of a workbook, by name or number')
}

/** Options of the reduction that go before those of the setup. */
export function addReduceOptions(command: Command): Command {
  return command
    .optionsGroup('Reducing and fitting:')
    .addOption(choice('--segmentation <how>', 'how steps are found', Object.keys(segmentations)))
    .option(
      '--draws <number>',
      'bootstrap draws behind the band; 1000 unless the setup says otherwise',
      wholeNumber(100, 1_000_000),
    )
    .option('--seed <number>', 'seed of the draws; 1 unless the setup says otherwise', wholeNumber(0, 2 ** 32 - 1))
}

type TableWords = Omit<ReadingOptions, 'json' | 'svg' | 'palette' | 'strict'>

/** What the use case wants. */
export const reduceArgs = (file: string, options: ReadingOptions, desk: Desk): ReduceFileArgs => ({
  file,
  setup: options.setup,
  reading: readingArgs(options, desk),
  options: reduceOptions(options),
})

/** What was said about columns and dialect. */
export function readingArgs(options: TableWords, desk: Desk): ReduceFileArgs['reading'] {
  const { separator, decimal, sheet } = options
  return {
    units: options.unit ?? [],
    columns: options.column ?? [],
    separator: separator === undefined ? undefined : separators[separator],
    decimalMark: decimal === undefined ? undefined : decimalMarks[decimal],
    encoding: options.encoding,
    sheet: sheet !== undefined && /^\d+$/.test(sheet) ? Number(sheet) : sheet,
    mapping: options.mapping,
    saveMapping: options.saveMapping,
    mappings: keptMappings(desk.environment),
  }
}

/** Options of the reduction that were given; the others stay with the setup and the defaults. */
export const reduceOptions = ({ segmentation, draws, seed }: TableWords): ReduceFileArgs['options'] => ({
  ...(segmentation === undefined ? {} : { segmentation: segmentations[segmentation] }),
  ...(draws === undefined ? {} : { bandDraws: draws }),
  ...(seed === undefined ? {} : { seed }),
})
