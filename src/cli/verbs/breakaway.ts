import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { quantityOption } from '../quantityOption.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly motion: number
  readonly why?: true
}

export const breakawayVerb: Verb = {
  name: 'breakaway',
  summary: 'find static friction in torque ramps, and how it grows with the time at rest',
  description:
    'Looks at every start from rest: torque at the first sustained motion with its interval, stiffness before sliding, and ' +
    'how static friction grows with the time at rest. Tells motion from wind-up, creep and noise of the encoder, and says ' +
    'when nothing broke away. With --why: whether a peak is static friction, wind-up or inertia.',
  examples: [
    'kufe breakaway runner.csv --setup runner.yaml',
    'kufe breakaway runner.csv --setup runner.yaml --why',
    'kufe breakaway runner.csv --setup runner.yaml --motion "20 µm" --svg starts.svg --json',
  ],
  define: (command, run) => {
    addReadingOptions(command)
      .optionsGroup('Breakaway:')
      .option(
        '--motion <length>',
        'sliding that has to be exceeded before it counts as motion',
        quantityOption('length', 0.1),
        10e-6,
      )
      .option('--why', 'what the peak of every start is, with the evidence')
      .action((file: string, options: Options) => run((desk) => breakaway(file, options, desk)))
  },
}

async function breakaway(file: string, options: Options, desk: Desk): Promise<number> {
  const { breakawayOfFile, breakawayText, drawBreakaway, writeWhole } = await import('../../bench/questions/index.ts')
  const json = options.json === true
  const args = { ...reduceArgs(file, options, desk), breakaway: { motion: options.motion } }
  const found = await breakawayOfFile(args, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  if (options.svg !== undefined) {
    const written = writeWhole(options.svg, drawBreakaway(found.value, options.palette))
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { breakawayInWords } = await import('../show/breakawayInWords.ts')
  desk.screen.out(json ? breakawayText(found.value) : breakawayInWords(found.value, desk.screen, options.why === true))
  const stood = found.value.breakaway.starts.some(({ moved }) => !moved)
  return options.strict === true && stood ? exitCodes.finding.code : exitCodes.ok.code
}
