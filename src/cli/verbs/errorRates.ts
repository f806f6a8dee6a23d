import { Option } from 'commander'
import type { RateRow } from '../../bench/errorRates/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

/** Tables that can be asked for; the type holds them against those that the bench has. */
const tables: Readonly<Record<RateRow['table'], true>> = {
  band: true,
  falseAlarm: true,
  same: true,
  power: true,
  scatter: true,
  unlike: true,
}

interface Options {
  readonly draws: number
  readonly seed: number
  readonly only?: RateRow['table']
  readonly json?: true
}

export const errorRatesVerb: Verb = {
  name: 'error-rates',
  summary: 'see how often comparisons err',
  description:
    'Draws samples whose truth is known, with 3, 5 and 8 replicates that differ in several ways, compares them as any others, ' +
    'and counts: how often the band holds the truth at all speeds, how often "differs" and "the same" are said wrongly, and ' +
    'whether the power that a plan promises is there. Four thousand draws a row take about ten minutes.',
  examples: ['kufe error-rates --draws 400', 'kufe error-rates --draws 4000 --seed 1 --json'],
  define: (command, run) => {
    command
      .option('-n, --draws <number>', 'comparisons for each row', wholeNumber(50, 1_000_000), 1000)
      .option('--seed <number>', 'seed of the study', wholeNumber(0, 2 ** 32 - 1), 1)
      .addOption(new Option('--only <table>', 'this table alone').choices(Object.keys(tables)))
      .option('--json', 'answer for machines: the table as JSON')
      .action((options: Options) => run((desk) => counted(options, desk)))
  },
}

async function counted({ draws, seed, only, json }: Options, desk: Desk): Promise<number> {
  const { errorRateStudy, isKept } = await import('../../bench/errorRates/index.ts')
  const study = await errorRateStudy({ draws, seed, table: only }, { ...desk.outside, stop: desk.stopOnInterrupt() })
  const { errorRatesInWords } = await import('../show/errorRatesInWords.ts')
  const document = `${JSON.stringify({ schemaVersion, ...study }, null, 2)}\n`
  desk.screen.out(json === true ? document : errorRatesInWords(study))
  return study.rows.every(isKept) ? exitCodes.ok.code : exitCodes.finding.code
}
