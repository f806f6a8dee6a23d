import { complain } from '../complain.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends ReadingOptions {
  readonly curve: boolean
}

export const reduceVerb: Verb = {
  name: 'reduce',
  summary: 'turn a record into friction values with uncertainties and remarks',
  description:
    'Turns one record into friction against sliding speed: a value for every step with its uncertainty, remarks with ' +
    'their numbers, the speeds at which the curve may be believed, and the fitted curve.',
  examples: [
    'kufe reduce drawer-b.csv --setup drawer.yaml',
    'kufe reduce drawer-b.csv --setup drawer.yaml --json --svg drawer-b.svg',
    'kufe reduce oats.xlsx --setup oats.yaml --column "Moment=torque" --unit "Moment=mN.m"',
  ],
  define: (command, run) => {
    addReadingOptions(command)
      .optionsGroup('Reducing and fitting:')
      .option('--no-curve', 'leave out the fitted curve')
      .action((file: string, options: Options) => run((desk) => reduce(file, options, desk)))
  },
}

async function reduce(file: string, options: Options, desk: Desk): Promise<number> {
  const { fitRecord, reduceFile } = await import('../../bench/reduce/index.ts')
  const reduced = await reduceFile(reduceArgs(file, options, desk), desk.outside)
  if (!reduced.ok) return complain(reduced.problems, desk, options.json === true)
  const { answerReduction } = await import('../answer.ts')
  const whole = options.curve ? fitRecord(reduced.value, desk.outside) : reduced.value
  return answerReduction(whole, options, desk)
}
