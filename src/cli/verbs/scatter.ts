import type { ScatterWords } from '../../bench/decide/scatter/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions, ScatterWords {}

export const scatterVerb: Verb = {
  name: 'scatter',
  summary: 'learn from your own history how many replicates you need',
  description:
    'Splits the scatter between the replicates that a lab has kept into days, ball sets, operators and mountings, each with the ' +
    'interval of its standard deviation, and says how many replicates see a difference: by the scatter as it was seen, and by ' +
    'the larger one that few replicates cannot exclude.',
  examples: [
    'kufe scatter',
    'kufe scatter drawer-runners --difference "15 %"',
    'kufe scatter lacquer-a --at "10 mm/s" --json',
  ],
  define: (command, run) => {
    command.argument('[id]', 'a study or a sample; the whole lab where left out')
    addLabOption(command)
      .option('--at <speed>', 'friction at this speed; the mean over all shared speeds where left out')
      .option('--difference <share>', 'smallest difference worth knowing; 10 % where left out')
      .option('--power <share>', 'chance to see it if it is there; 80 % where left out')
      .option('--significance <share>', 'chance to see one that is not there; 5 % where left out')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((word: string | undefined, options: Options) => run((desk) => told(word, options, desk)))
  },
}

async function told(word: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { scatterText, tellScatter } = await import('../../bench/decide/scatter/index.ts')
  const found = await tellScatter({ word, words: options }, call.value, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  const { scatterInWords } = await import('../show/scatterInWords.ts')
  desk.screen.out(json ? scatterText(found.value) : scatterInWords(found.value, desk.screen))
  return exitCodes.ok.code
}
