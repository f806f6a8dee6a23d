import { complain } from '../complain.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

export const importVerb: Verb = {
  name: 'import',
  summary: 'take a data package into a lab',
  description:
    'Takes a data package that "kufe export" wrote into a lab. Every file is held against its checksum first. A lab that is ' +
    'not there yet becomes that of the package, history and all; another one gets what it does not have.',
  examples: ['kufe import drawer-runners.zip --lab kufe-lab', 'kufe import whole-lab/ --lab copy-of-the-lab --by MK'],
  define: (command, run) => {
    command.argument('<package>', 'the folder or the zip of a data package')
    addChangeOptions(addLabOption(command))
      .option('--json', 'answer for machines: JSON on standard output')
      .action((path: string, options: LabOptions) => run((desk) => imported(path, options, desk)))
  },
}

async function imported(path: string, options: LabOptions, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { importPackage } = await import('../../bench/lab/package/index.ts')
  const { answerImported } = await import('../importAnswer.ts')
  const taken = await importPackage(path, call.value, desk.outside)
  return taken.ok ? answerImported(taken.value, desk, json) : complain(taken.problems, desk, json)
}
