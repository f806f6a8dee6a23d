import { complain } from '../complain.ts'
import { answerCopy } from '../copyAnswer.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

export const backupVerb: Verb = {
  name: 'backup',
  summary: 'copy a lab as it stands now',
  description:
    'Copies a lab as it stands now into a new folder or an empty database, while others go on working with it. The copy ' +
    'is a lab itself. All raw bytes are held against their checksums on the way.',
  examples: ['kufe backup /backups/lab-2026-11-25', 'kufe backup /backups/lab --lab postgres://db.example/lacquer'],
  define: (command, run) => {
    command.argument('<place>', 'where to: a folder that is not there yet, or the address of an empty database')
    addLabOption(command)
      .option('--json', 'answer for machines: JSON on standard output')
      .action((to: string, options: LabOptions) => run((desk) => backedUp(to, options, desk)))
  },
}

async function backedUp(to: string, options: LabOptions, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { backupLab } = await import('../../bench/lab/index.ts')
  const copied = await backupLab(to, call.value, desk.outside)
  return copied.ok ? answerCopy(copied.value, desk, json) : complain(copied.problems, desk, json)
}
