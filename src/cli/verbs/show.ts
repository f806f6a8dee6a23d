import type { Shown } from '../../bench/lab/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

export const showVerb: Verb = {
  name: 'show',
  summary: 'see a record with its history and its result, or a study',
  description:
    'Shows a record as the lab keeps it: what people say about it, who changed what, when and why, all its results, ' +
    'and the one that counts. Of a study or a sample it shows the records. Nothing is computed.',
  examples: ['kufe show drawer-b.csv', 'kufe show 3f9a2b41c0de --json', 'kufe show drawer-runners'],
  define: (command, run) => {
    command.argument('<id>', 'a record by its id, the beginning of it or the name of its file; a study or a sample')
    addLabOption(command)
      .option('--json', 'answer for machines: JSON on standard output')
      .action((word: string, options: LabOptions) => run((desk) => show(word, options, desk)))
  },
}

async function show(word: string, options: LabOptions, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { showThing } = await import('../../bench/lab/index.ts')
  const shown = await showThing(word, call.value, desk.outside)
  if (!shown.ok) return complain(shown.problems, desk, json)
  const { thingInWords } = await import('../show/thingInWords.ts')
  desk.screen.out(json ? asJson(shown.value) : thingInWords(shown.value, desk.screen))
  return exitCodes.ok.code
}

function asJson(shown: Shown): string {
  if (shown.kind !== 'record') return `${JSON.stringify({ schemaVersion, ...shown }, null, 2)}\n`
  const { read, current, ...rest } = shown
  const result = read === undefined ? null : JSON.parse(read.text)
  return `${JSON.stringify({ schemaVersion, ...rest, current: current?.id ?? null, result }, null, 2)}\n`
}
