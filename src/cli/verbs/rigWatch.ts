import { Option } from 'commander'
import type { RigWatch } from '../../bench/decide/watch/index.ts'
import { failed, type Outcome } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options extends LabOptions {
  readonly at?: string
  readonly baseline?: number
  readonly rules?: string
  readonly ewma: boolean
  readonly answer?: string
  readonly svg?: string
  readonly palette: 'light' | 'dark' | 'print'
}

export const rigWatchVerb: Verb = {
  name: 'rig-watch',
  summary: 'see whether the rig of today is the rig of last month',
  description:
    'Charts a sample that is measured again and again: single values, moving ranges and a weighted mean against limits from the ' +
    'first measurements, with run rules; and says how much of the drift goes with time, temperature, ball set and operator. ' +
    'An alarm blocks nothing, but every report prints it until somebody answers it.',
  examples: [
    'kufe rig-watch check-oil --at "10 mm/s" --by MK --why "our check standard from now on"',
    'kufe rig-watch',
    'kufe rig-watch --answer check-oil-3f9a2b41-beyond-three --by MK --why "worn ball set, thrown away"',
  ],
  define: (command, run) => {
    command.argument('[sample]', 'the id of a sample; all that are watched where left out')
    addLabOption(command)
      .option('--at <speed>', 'begin to watch the sample at this sliding speed, or change how it is watched')
      .option('--baseline <number>', 'measurements that the limits come from; 20 where left out', wholeNumber(2, 1000))
      .addOption(
        new Option('--rules <name>', 'run rules; western-electric where left out').choices([
          'one',
          'western-electric',
          'nelson',
        ]),
      )
      .option('--no-ewma', 'hold no weighted mean')
      .option('--answer <alarm>', 'say with --why what an alarm was')
    addChangeOptions(command)
      .option('--svg <file>', 'draw the chart; with several a number is put before the ending')
      .addOption(
        new Option('--palette <name>', 'colours of the drawing').choices(['light', 'dark', 'print']).default('light'),
      )
      .option('--json', 'answer for machines: JSON on standard output')
      .action((sample: string | undefined, options: Options) => run((desk) => watched(sample, options, desk)))
  },
}

async function watched(sample: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const found = await watchesOf(sample, options, desk)
  if (!found.ok) return complain(found.problems, desk, json)
  const { drawWatch, watchText } = await import('../../bench/decide/watch/index.ts')
  if (options.svg !== undefined) {
    const { writeDrawings } = await import('../writeDrawings.ts')
    const written = await writeDrawings(
      options.svg,
      found.value.map((watch) => drawWatch(watch, options.palette)),
    )
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { watchesInWords } = await import('../show/watchesInWords.ts')
  desk.screen.out(json ? watchText(found.value) : watchesInWords(found.value, desk.screen))
  const open = found.value.some(({ alarms }) => alarms.some(({ answer }) => answer === null))
  return open ? exitCodes.finding.code : exitCodes.ok.code
}

async function watchesOf(
  sample: string | undefined,
  options: Options,
  desk: Desk,
): Promise<Outcome<readonly RigWatch[]>> {
  const { answerAlarm, keepWatch, watchRig } = await import('../../bench/decide/watch/index.ts')
  const { at, answer, baseline, rules, ewma } = options
  if (at === undefined && answer === undefined) {
    const call = await lookingCall(options, desk)
    return call.ok ? watchRig(sample, call.value, desk.outside) : call
  }
  const call = await changingCall(options, desk)
  if (!call.ok) return call
  if (answer !== undefined) return answerAlarm(answer, call.value, desk.outside)
  if (sample === undefined || at === undefined) return failed(noSample)
  return keepWatch({ sample, words: { at, baseline, rules, ewma } }, call.value, desk.outside)
}

const noSample = {
  kind: 'sampleWanted',
  class: 'wrongUse' as const,
  place: { name: '--at' },
  what: 'Nobody said which sample is to be watched.',
  mend: 'Name it: kufe rig-watch SAMPLE --at "10 mm/s".',
}
