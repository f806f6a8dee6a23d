import { Option } from 'commander'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options {
  readonly seed: number
  readonly trials: number
  readonly json?: true
  readonly svg?: string
  readonly palette: 'light' | 'dark' | 'print'
}

export const uncertaintyVerb: Verb = {
  name: 'uncertainty',
  summary: 'find the uncertainty of whatever you derive by a formula',
  description:
    'Propagates the uncertainties of named quantities through formulas twice, by the law of propagation (JCGM 100) and by adaptive ' +
    'Monte Carlo (JCGM 101), holds the two against each other and says when the law does not hold. Quantities are written with ' +
    'units and what is known of them, or come from reduced records.',
  examples: [
    'kufe uncertainty wear.yaml',
    'kufe uncertainty wear.yaml --seed 7 --svg wear.svg',
    'kufe uncertainty wear.yaml --json',
  ],
  define: (command, run) => {
    command
      .argument('<model>', 'quantities, correlations and formulas (YAML)')
      .option('--seed <number>', 'seed of the trials', wholeNumber(0, 2 ** 32 - 1), 1)
      .option(
        '--trials <number>',
        'most trials; they end sooner where the result is settled',
        wholeNumber(200_000, 20_000_000),
        1_000_000,
      )
      .option('--svg <file>', 'draw the distribution; with several results a number is put before the ending')
      .addOption(
        new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
      )
      .option('--json', 'answer for machines: JSON on standard output')
      .action((file: string, options: Options) => run((desk) => propagated(file, options, desk)))
  },
}

async function propagated(file: string, { seed, trials, json, svg, palette }: Options, desk: Desk): Promise<number> {
  const { drawOutcome, outcomeText, propagateModel } = await import('../../bench/decide/uncertainty/index.ts')
  const found = await propagateModel(file, { seed, mostTrials: trials })
  if (!found.ok) return complain(found.problems, desk, json === true)
  const { derived } = found.value
  if (svg !== undefined) {
    const { writeDrawings } = await import('../writeDrawings.ts')
    const written = await writeDrawings(
      svg,
      derived.map((one) => drawOutcome(found.value, one, palette)),
    )
    if (!written.ok) return complain(written.problems, desk, json === true)
  }
  const { outcomesInWords } = await import('../show/outcomesInWords.ts')
  desk.screen.out(json === true ? outcomeText(found.value) : outcomesInWords(found.value, desk.screen))
  return exitCodes.ok.code
}
