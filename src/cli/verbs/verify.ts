import { schemaVersion } from '../../core/terms/index.ts'
import { addThreadsOption, threadsOf } from '../addOptions.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly keep?: true
  readonly threads?: number
}

export const verifyVerb: Verb = {
  name: 'verify',
  summary: 'prove that results come out again, bit for bit',
  description:
    'Holds raw bytes, setups and results against their checksums, computes the results again and compares bit for bit. ' +
    'What another version of the program made is computed beside it, and what changed is told by how much. Answers 1 ' +
    'where anything is found.',
  examples: ['kufe verify', 'kufe verify drawer-b.csv', 'kufe verify drawer-runners --keep --by MK --why "version 2"'],
  define: (command, run) => {
    command.argument('[id]', 'a record, a study or a sample; the whole lab if left out')
    addLabOption(command).option('--keep', 'keep results of this version beside those of other versions')
    addThreadsOption(addChangeOptions(command))
      .option('--json', 'answer for machines: JSON on standard output')
      .action((word: string | undefined, options: Options) => run((desk) => verified(word, options, desk)))
  },
}

async function verified(word: string | undefined, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await (options.keep === true ? changingCall(options, desk) : lookingCall(options, desk))
  if (!call.ok) return complain(call.problems, desk, json)
  const { verifyLab } = await import('../../bench/lab/index.ts')
  const args = { word, keep: options.keep === true, threads: threadsOf(options) }
  const seen = await verifyLab(args, call.value, desk.outside)
  if (!seen.ok) return complain(seen.problems, desk, json)
  const { verificationInWords } = await import('../show/verificationInWords.ts')
  const document = `${JSON.stringify({ schemaVersion, ...seen.value }, null, 2)}\n`
  desk.screen.out(json ? document : verificationInWords(seen.value, desk.screen))
  const { findings } = seen.value
  if (findings.some(({ what }) => what === 'fault')) return exitCodes.fault.code
  return findings.length > 0 ? exitCodes.finding.code : exitCodes.ok.code
}
