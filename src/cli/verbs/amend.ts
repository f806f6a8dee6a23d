import { addFactOptions, addReplicateOption, type FactOptions } from '../addOptions.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions, FactOptions {
  readonly setup?: string
  readonly answers?: string
}

export const amendVerb: Verb = {
  name: 'amend',
  summary: 'correct what is said about a record, as a new version',
  description:
    'Corrects the setup of a record or what else is said about it, or keeps its filled run sheet. What was there stays: the correction is a new version ' +
    'that supersedes it, with who, when and why. With another setup the record is reduced again, and nothing changes ' +
    'where it cannot be.',
  examples: [
    'kufe amend drawer-b.csv --setup drawer-8mm.yaml --by MK --why "the 8 mm balls were mounted"',
    'kufe amend 3f9a2b41c0de --sample "lacquer B" --replicate 2 --why "mixed up with replicate 3"',
    'kufe amend drawer-b.csv --answers filled.json --why "run sheet typed in"',
  ],
  define: (command, run) => {
    command.argument('<id>', 'a record by its id, the beginning of it or the name of its file')
    addLabOption(command)
      .option('-s, --setup <file>', 'the setup that it was really measured with')
      .option('--answers <file>', 'the filled run sheet (JSON, as "kufe plan" writes it) that belongs to it')
    addReplicateOption(addFactOptions(addChangeOptions(command)), 'replicate of the sample, from 1')
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((word: string, options: Options) => run((desk) => amended(word, options, desk)))
  },
}

async function amended(word: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { amendRecord } = await import('../../bench/lab/index.ts')
  const { study, sample, setup, answers, replicate, mountedBy, ballSet, day } = options
  const args = { word, setup, answers, names: { study, sample }, facts: { replicate, mountedBy, ballSet, day } }
  const done = await amendRecord(args, call.value, desk.outside)
  if (!done.ok) return complain(done.problems, desk, json)
  const { answerAmended } = await import('../amendAnswer.ts')
  desk.screen.out(answerAmended(done.value, json))
  return exitCodes.ok.code
}
