import { complain } from '../complain.ts'
import { answerCopy } from '../copyAnswer.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly json?: true
}

export const restoreVerb: Verb = {
  name: 'restore',
  summary: 'make a lab out of a backup',
  description:
    'Makes a lab out of a backup, in a new folder or an empty database; this is also the way from a folder to a database ' +
    'and back. The backup is only read, and a lab that is there is never written over.',
  examples: ['kufe restore /backups/lab-2026-11-25 kufe-lab', 'kufe restore kufe-lab postgres://db.example/lacquer'],
  define: (command, run) => {
    command
      .argument('<backup>', 'the backup, or any lab')
      .argument('<place>', 'where to: a folder that is not there yet, or the address of an empty database')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((from: string, to: string, options: Options) => run((desk) => restored(from, { to, ...options }, desk)))
  },
}

async function restored(from: string, options: Options & { readonly to: string }, desk: Desk): Promise<number> {
  const json = options.json === true
  const { restoreBackup } = await import('../../bench/lab/index.ts')
  const copied = await restoreBackup(from, options.to, desk.outside)
  return copied.ok ? answerCopy(copied.value, desk, json) : complain(copied.problems, desk, json)
}
