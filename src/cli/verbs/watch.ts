import { type AddOptions, addArgs, addFactOptions, addPlaceOptions } from '../addOptions.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { changingCall } from '../labOptions.ts'
import { addReduceOptions, addTableOptions } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'
import { watchAnswer } from '../watchAnswer.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options extends AddOptions {
  readonly still: number
}

export const watchVerb: Verb = {
  name: 'watch',
  summary: 'add records as they appear in a folder',
  description:
    'Adds the records of a folder to a lab as they appear, each once it has stopped growing, until Ctrl+C. It may be ' +
    'stopped in any way at any moment: started again, it goes on and gives the same lab.',
  examples: ['kufe watch rig-output/ --setup drawer.yaml --study drawer-runners', 'kufe watch rig-output/ --still 60'],
  define: (command, run) => {
    command.argument('<folder>', 'the folder into which the rheometer or its people put records')
    addPlaceOptions(command).option(
      '--still <seconds>',
      'how long a file must not have changed',
      wholeNumber(1, 86_400),
      10,
    )
    addReduceOptions(addTableOptions(addFactOptions(command)))
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: one line of JSON for each event')
      .action((folder: string, options: Options) => run((desk) => watched(folder, options, desk)))
  },
}

async function watched(folder: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { watchFolder } = await import('../../bench/lab/index.ts')
  const outside = { ...desk.outside, stop: desk.stopOnInterrupt() }
  const args = { ...addArgs(options, desk), folder, still: options.still }
  const done = await watchFolder(args, call.value, { outside, ...watchAnswer(folder, desk, json) })
  return done.ok ? exitCodes.ok.code : complain(done.problems, desk, json)
}
