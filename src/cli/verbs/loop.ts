import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { quantityOption } from '../quantityOption.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly margin: number
  readonly why?: true
}

export const loopVerb: Verb = {
  name: 'loop',
  summary: 'compare rising with falling speeds, and say why they differ',
  description:
    'Compares up with down at every speed that was measured both ways: difference with its own interval, for each speed and for ' +
    'all at once, what both share kept apart, the area of the loop, and whether it is real. With --why: an ordered list of ' +
    'causes, each with what the record says for and against it and the test that would tell.',
  examples: [
    'kufe loop oats.csv --setup oats.yaml',
    'kufe loop oats.csv --setup oats.yaml --why',
    'kufe loop oats.csv --setup oats.yaml --margin "10 %" --svg loop.svg --json',
  ],
  define: (command, run) => {
    addReadingOptions(command)
      .optionsGroup('Loop:')
      .option(
        '--margin <share>',
        'largest difference that does not matter, as a share of friction',
        quantityOption('ratio', 1),
        0.05,
      )
      .option('--why', 'causes of the loop in order, each with evidence and test')
      .action((file: string, options: Options) => run((desk) => loop(file, options, desk)))
  },
}

async function loop(file: string, options: Options, desk: Desk): Promise<number> {
  const { drawLoop, loopOfFile, loopText, writeWhole } = await import('../../bench/questions/index.ts')
  const json = options.json === true
  const args = { ...reduceArgs(file, options, desk), loop: { margin: options.margin } }
  const found = await loopOfFile(args, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawLoop(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { loopInWords } = await import('../show/loopInWords.ts')
  desk.screen.out(json ? loopText(found.value) : loopInWords(found.value, desk.screen, options.why === true))
  return options.strict === true && found.value.loop.verdict === 'real' ? exitCodes.finding.code : exitCodes.ok.code
}
