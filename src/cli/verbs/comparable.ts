import type { ComparableWords } from '../../bench/decide/comparable/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions, Omit<ComparableWords, 'first' | 'second' | 'betweenLaboratories'> {
  readonly betweenLabs?: string
}

export const comparableVerb: Verb = {
  name: 'comparable',
  summary: 'ask whether two numbers may be held against each other',
  description:
    'Holds the tribosystems behind two records, or two setup files, against each other: fixture, bodies, load, liquid, ' +
    'temperature, humidity, roughness, and how the numbers were made. Refuses the comparison with reasons where they are of ' +
    'different things; otherwise says what may shift the difference, and how the numbers stand with all that counts in it.',
  examples: [
    'kufe comparable lacquer-a-1.csv lacquer-a-2.csv',
    'kufe comparable lacquer-a-1.csv theirs.setup.yaml',
    'kufe comparable march.csv today.csv --at "10 mm/s" --repeatability "6 %"',
  ],
  define: (command, run) => {
    const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
    command.argument('<first>', 'a record of the lab, or a setup file (.yaml)').argument('<second>', 'another one')
    addLabOption(command)
      .option('--at <speed>', 'hold the numbers at this speed; may be repeated', several)
      .option('--repeatability <share>', 'standard deviation between mountings, as "kufe scatter" tells it')
      .option('--between-labs <share>', 'standard deviation between laboratories, as "kufe round" tells it')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((first: string, second: string, options: Options) =>
        run((desk) => held({ first, second }, options, desk)),
      )
  },
}

async function held(pair: Pick<ComparableWords, 'first' | 'second'>, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const { comparableText, holdSystems } = await import('../../bench/decide/comparable/index.ts')
  const { at, repeatability, betweenLabs } = options
  const words = { ...pair, at, repeatability, betweenLaboratories: betweenLabs }
  const found = await holdSystems(words, () => lookingCall(options, desk), desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  const { comparableInWords } = await import('../show/comparableInWords.ts')
  desk.screen.out(json ? comparableText(found.value) : comparableInWords(found.value, desk.screen))
  return found.value.verdict === 'refused' ? exitCodes.finding.code : exitCodes.ok.code
}
