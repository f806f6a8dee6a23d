import { Option } from 'commander'
import type { CoverageKindName } from '../../bench/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

/** Studies that can be asked for; the type holds them against those that the bench has. */
const studies: Readonly<Record<CoverageKindName, true>> = {
  curves: true,
  'stick-slip': true,
  wear: true,
  'turn-map': true,
  master: true,
  breakaway: true,
  hold: true,
  loop: true,
  series: true,
  lives: true,
}

interface Options {
  readonly of: CoverageKindName
  readonly curves: number
  readonly seed: number
  readonly workers: number
  readonly json?: true
}

export const coverageVerb: Verb = {
  name: 'coverage',
  summary: 'see how often the intervals hold the truth',
  description:
    'Makes records whose truth is known, with varied noise, correlation, step length, fixture and truth, reduces and fits ' +
    'each, and counts how many of the 95 % intervals hold the truth. Between 93 and 97 %, give or take the standard error ' +
    'of the count, is honest. A thousand curves take a minute or two.',
  examples: ['kufe coverage --curves 200', 'kufe coverage --curves 1000 --seed 1 --json'],
  define: (command, run) => {
    command
      .option('-n, --curves <number>', 'how many curves to make', wholeNumber(1, 1_000_000), 1000)
      .addOption(new Option('--of <what>', 'intervals of what').choices(Object.keys(studies)).default('curves'))
      .option('--seed <number>', 'seed of the study', wholeNumber(0, 2 ** 32 - 1), 1)
      .option('--workers <number>', 'how many to work on at once', wholeNumber(1, 64), 2)
      .option('--json', 'answer for machines: the table as JSON')
      .action((options: Options) => run((desk) => covered(options, desk)))
  },
}

async function covered(options: Options, desk: Desk): Promise<number> {
  const { coverageStudy, isHonest } = await import('../../bench/index.ts')
  const study = await coverageStudy(options, desk.outside)
  const { coverageInWords } = await import('../show/coverageInWords.ts')
  const document = `${JSON.stringify({ schemaVersion, ...study }, null, 2)}\n`
  desk.screen.out(options.json === true ? document : coverageInWords(study))
  return study.rows.every(isHonest) ? exitCodes.ok.code : exitCodes.finding.code
}
