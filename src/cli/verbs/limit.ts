import { type Command, Option } from 'commander'
import type { LimitWords } from '../../bench/decide/limit/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions, LimitWords {
  readonly keep?: true
  readonly svg?: string
  readonly palette: 'light' | 'dark' | 'print'
}

export const limitVerb: Verb = {
  name: 'limit',
  summary: 'say pass, fail or cannot tell against a written limit',
  description:
    'Holds the friction of a record, a sample or every sample of a study against a limit, over a range of speeds or at named ' +
    'ones, by a decision rule that you choose. Beside each verdict stands the probability that it is wrong. --keep keeps the ' +
    'limit for the study, and its reports print the verdict.',
  examples: [
    'kufe limit drawer-runners --upper 0.12 --from "1 mm/s" --to "100 mm/s"',
    'kufe limit lacquer-b --upper 0.12 --at "10 mm/s" --rule risk --risk "1 %"',
    'kufe limit drawer-runners --upper 0.12 --keep --by MK --why "agreed with the joiner"',
  ],
  define: (command, run) => {
    command.argument('<id>', 'a record, a sample or a study')
    addLimitOptions(addLabOption(command))
    addChangeOptions(command)
      .option('--svg <file>', 'draw the verdict; with several samples a number is put before the ending')
      .addOption(
        new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
      )
      .option('--json', 'answer for machines: JSON on standard output')
      .action((word: string, options: Options) => run((desk) => judged(word, options, desk)))
  },
}

function addLimitOptions(command: Command): Command {
  const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text]
  return command
    .option('--upper <friction>', 'friction may be at most this')
    .option('--lower <friction>', 'friction must be at least this')
    .option('--from <speed>', 'slowest speed of the limit; that of the data where left out')
    .option('--to <speed>', 'fastest speed of the limit')
    .option('--at <speed>', 'a named speed instead of a range; may be repeated', several)
    .addOption(
      new Option('--rule <name>', 'decision rule; guarded where left out').choices(['simple', 'guarded', 'risk']),
    )
    .option('--guard <factor>', 'width of the guard band over U, for "guarded"; 1 where left out')
    .option('--risk <share>', 'largest risk of a wrong verdict, for "risk"; 5 % where left out')
    .option('--keep', 'keep this limit for the study')
}

async function judged(word: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const keep = options.keep === true
  const call = keep ? await changingCall(options, desk) : await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { drawLimit, judgeLimits, limitText } = await import('../../bench/decide/limit/index.ts')
  const found = await judgeLimits({ word, words: options, keep }, call.value, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  const { answers } = found.value
  if (options.svg !== undefined) {
    const { writeDrawings } = await import('../writeDrawings.ts')
    const drawn = answers.map((_, place) => drawLimit(found.value, place, options.palette))
    const written = await writeDrawings(options.svg, drawn)
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { limitsInWords } = await import('../show/limitsInWords.ts')
  desk.screen.out(json ? limitText(found.value) : limitsInWords(found.value, desk.screen))
  return answers.some(({ verdict }) => verdict === 'fail') ? exitCodes.finding.code : exitCodes.ok.code
}
