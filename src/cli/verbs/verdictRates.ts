import { schemaVersion } from '../../core/terms/index.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options {
  readonly draws: number
  readonly seed: number
  readonly json?: true
}

export const verdictRatesVerb: Verb = {
  name: 'verdict-rates',
  summary: 'see how often limits and the rig watch err',
  description:
    'Draws values whose truth is known and counts: how often a decision rule says pass or fail wrongly where the truth lies right ' +
    'on the limit, with 3 and 5 mountings, at one speed and at ten; and how many measurements a control chart stays silent, ' +
    'with and without a shift of the rig. Twenty thousand draws take two or three minutes.',
  examples: ['kufe verdict-rates --draws 2000', 'kufe verdict-rates --draws 20000 --seed 1 --json'],
  define: (command, run) => {
    command
      .option(
        '-n, --draws <number>',
        'verdicts for each row, and twice the charts',
        wholeNumber(400, 10_000_000),
        20_000,
      )
      .option('--seed <number>', 'seed of the study', wholeNumber(0, 2 ** 31), 1)
      .option('--json', 'answer for machines: the tables as JSON')
      .action((options: Options) => run((desk) => counted(options, desk)))
  },
}

async function counted({ draws, seed, json }: Options, desk: Desk): Promise<number> {
  const { keepsPromise, verdictRates } = await import('../../bench/decide/rates/index.ts')
  const study = verdictRates({ draws, seed }, desk.outside)
  const { verdictRatesInWords } = await import('../show/verdictRatesInWords.ts')
  const document = `${JSON.stringify({ schemaVersion, ...study }, (_, value) => (value === Number.POSITIVE_INFINITY ? null : value), 2)}\n`
  desk.screen.out(json === true ? document : verdictRatesInWords(study))
  return study.limits.every((row) => keepsPromise(row, draws)) ? exitCodes.ok.code : exitCodes.finding.code
}
