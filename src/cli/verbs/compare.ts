import type { Command } from 'commander'
import { Option } from 'commander'
import type { Compared, CompareWords } from '../../bench/compare/index.ts'
import { failed, type Outcome } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall, whoIs } from '../labOptions.ts'
import { addTableOptions, type ReadingOptions, readingArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options extends Omit<ReadingOptions, 'draws' | 'seed'>, LabOptions, Omit<CompareWords, 'draws' | 'seed'> {
  readonly study?: string
  readonly sample?: readonly string[]
  readonly turns?: number
  readonly seed?: number
  readonly html?: string
  readonly pdf?: string
  readonly author?: string
  readonly json?: true
}

export const compareVerb: Verb = {
  name: 'compare',
  summary: 'hold samples against each other over all speeds',
  description:
    'Says where along the speed axis samples differ, by how much, and where they are the same for practical purposes, ' +
    'with a band that holds at all speeds at once. The replicate is the unit. Of one sample it tells the repeatability.',
  examples: [
    'kufe compare "A=runs/a-*.csv" "B=runs/b-*.csv" --setup varnish.setup.yaml',
    'kufe compare --study drawer-runners --margin "10 %" --pdf decision.pdf',
    'kufe compare "A=runs/a-*.csv" "B=runs/b-*.csv" --without "a-3.csv=ball scratched" --by MK',
  ],
  define: (command, run) => {
    command
      .argument('[records...]', 'NAME=FILES each: a file, a folder, or a pattern in quotation marks')
      .option('-s, --setup <file>', 'setup of all records; else the one beside each')
      .option('--study <id>', 'a study that a lab keeps, as its results stand')
      .option('--sample <name>', 'of a study, compare this sample; may be repeated', several)
    addLabOption(command)
    addAsking(command)
    addTableOptions(command)
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: JSON in SI units on standard output')
      .option('--svg <file>', 'draw the difference, or the replicates of one sample, into this file')
      .option('--html <file>', 'write the report of the decision as HTML')
      .option('--pdf <file>', 'write it as PDF')
      .option('--author <name>', 'who answers for the report')
      .addOption(
        new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
      )
      .action((records: readonly string[], options: Options) => run((desk) => compare(records, options, desk)))
  },
}

const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]

function addAsking(command: Command): Command {
  return command
    .optionsGroup('Comparing:')
    .option('--margin <share>', 'largest difference without meaning; 10 % if nothing is said')
    .option('--difference', 'compare friction less friction, not the ratio; the margin is then a friction')
    .option('--separate', 'let each sample have its own scatter')
    .option('--at <speed>', 'tell the effect at this speed for itself; may be repeated', several)
    .option('--rank-at <speed>', 'rank by the friction at this speed, not by the mean over all')
    .option('--without <record=reason>', 'take a replicate out; may be repeated, needs --by', several)
    .option('--by <initials>', 'who takes it out')
    .option('--turns <number>', 'random turns behind the bands; 10000 if nothing is said', wholeNumber(200, 1_000_000))
    .option('--seed <number>', 'seed of the turns; 1 if nothing is said', wholeNumber(0, 2 ** 32 - 1))
}

async function compare(records: readonly string[], options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const compared = await comparedOf(records, options, desk)
  if (!compared.ok) return complain(compared.problems, desk, json)
  const { comparisonText, writeComparison } = await import('../../bench/compare/index.ts')
  const written = await writeComparison(compared.value, { ...options, date: dayOf(desk) })
  if (!written.ok) return complain(written.problems, desk, json)
  for (const file of written.value) desk.screen.err(`Wrote ${file}\n`)
  if (json) desk.screen.out(comparisonText(compared.value))
  else {
    const { comparisonInWords } = await import('../show/comparisonInWords.ts')
    desk.screen.out(comparisonInWords(compared.value, desk.screen))
  }
  return exitCodes.ok.code
}

const dayOf = ({ outside }: Desk): string => outside.now().toISOString().slice(0, 10)

async function comparedOf(words: readonly string[], options: Options, desk: Desk): Promise<Outcome<Compared>> {
  const { study, setup, turns } = options
  const ask = { ...options, draws: turns, by: options.by ?? whoIs(desk, undefined) }
  const { compareFiles, compareStudy } = await import('../../bench/compare/index.ts')
  if (study !== undefined) {
    if (words.length > 0) return failed(oneOrTheOther)
    const call = await lookingCall(options, desk)
    return call.ok ? compareStudy({ study, samples: options.sample, ask }, call.value, desk.outside) : call
  }
  const reading = readingArgs({ ...options, draws: undefined }, desk)
  return compareFiles({ words, setup, reading, options: {}, ask }, desk.outside)
}

const oneOrTheOther = {
  kind: 'studyAndRecords',
  class: 'wrongUse' as const,
  place: { name: 'study' },
  what: 'Records of a lab and files cannot be compared in one call.',
  mend: 'Leave the files away, or --study; "kufe add" puts files into a lab.',
}
