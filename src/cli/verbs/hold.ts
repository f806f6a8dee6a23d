import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { quantityOption } from '../quantityOption.ts'
import { addManyReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly margin: number
  readonly steady: number
  readonly threshold?: number
  readonly skip?: number
}

export const holdVerb: Verb = {
  name: 'hold',
  summary: 'follow friction over the distance slid: running-in, drift, life',
  description:
    'Takes the longest stretch at one speed of every record and fits friction over the distance slid: running-in law, distance ' +
    'to the steady state, drift, each with a 95 % interval that knows about correlated noise. With --threshold: the distance ' +
    'at which friction passed it for good, and over several records a Weibull law of lives, those that lasted counted as longer.',
  examples: [
    'kufe hold drawer-b.csv --setup drawer.yaml',
    'kufe hold lacquer-1.csv lacquer-2.csv lacquer-3.csv --setup drawer.yaml --threshold 0.4',
    'kufe hold drawer-b.csv --setup drawer.yaml --margin "2 %" --svg hold.svg --json',
  ],
  define: (command, run) => {
    addManyReadingOptions(command)
      .optionsGroup('Hold:')
      .option(
        '--margin <share>',
        'largest change over the last third that does not matter',
        quantityOption('ratio', 1),
        0.05,
      )
      .option(
        '--steady <share>',
        'share of the steady value within which friction counts as steady',
        quantityOption('ratio', 1),
        0.02,
      )
      .option('--threshold <friction>', 'friction that ends the life of a coating', quantityOption('ratio'))
      .option('--skip <length>', 'sliding distance at the head that is left out', quantityOption('length'))
      .action((files: string[], options: Options) => run((desk) => hold(files, options, desk)))
  },
}

async function hold(files: readonly string[], options: Options, desk: Desk): Promise<number> {
  const { drawHold, holdOfFiles, holdText, writeWhole } = await import('../../bench/questions/index.ts')
  const { holdDefaults } = await import('../../core/reduce/questions/index.ts')
  const json = options.json === true
  const { file: _, ...reading } = reduceArgs('', options, desk)
  const wanted = {
    ...holdDefaults,
    margin: options.margin,
    steadyShare: options.steady,
    threshold: options.threshold ?? null,
    skip: options.skip ?? 0,
  }
  const found = await holdOfFiles({ ...reading, files, hold: wanted }, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawHold(found.value.holds[0], options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { holdInWords } = await import('../show/holdInWords.ts')
  desk.screen.out(json ? holdText(found.value) : holdInWords(found.value, desk.screen))
  const open = found.value.holds.some(({ hold: { runIn } }) => runIn.verdict !== 'runIn')
  return options.strict === true && open ? exitCodes.finding.code : exitCodes.ok.code
}
