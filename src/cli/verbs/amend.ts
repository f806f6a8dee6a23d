import type { MovedWindow } from '../../core/terms/index.ts'
import { addFactOptions, addReplicateOption, type FactOptions } from '../addOptions.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addChangeOptions, addLabOption, changingCall, type LabOptions } from '../labOptions.ts'
import { movedWindowOption } from '../movedWindows.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions, FactOptions {
  readonly setup?: string
  readonly answers?: string
  /** false where those that somebody moved go back. */
  readonly window?: readonly MovedWindow[] | false
}

export const amendVerb: Verb = {
  name: 'amend',
  summary: 'correct what is said about a record, as a new version',
  description:
    'Corrects the setup of a record or what else is said about it, moves windows of its steps, or keeps its filled run ' +
    'sheet. What was there stays: the correction is a new version that supersedes it, with who, when and why. With another ' +
    'setup or other windows the record is reduced again, and nothing changes where it cannot be.',
  examples: [
    'kufe amend drawer-b.csv --setup drawer-8mm.yaml --by MK --why "the 8 mm balls were mounted"',
    'kufe amend 3f9a2b41c0de --sample "lacquer B" --replicate 2 --why "mixed up with replicate 3"',
    'kufe amend drawer-b.csv --window 3=12.5..20 --why "somebody leaned on the table at 11 s"',
    'kufe amend drawer-b.csv --answers filled.json --why "run sheet typed in"',
  ],
  define: (command, run) => {
    command.argument('<id>', 'a record by its id, the beginning of it or the name of its file')
    addLabOption(command)
      .option('-s, --setup <file>', 'the setup that it was really measured with')
      .option(
        '--window <step=from..to>',
        'rows of this step that count, in seconds; may be said again',
        movedWindowOption,
      )
      .option('--no-window', 'put back the windows that the program chose')
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
  const { study, sample, setup, answers, window, replicate, mountedBy, ballSet, day } = options
  const windows = window === false ? ('own' as const) : window
  const args = {
    word,
    setup,
    answers,
    windows,
    names: { study, sample },
    facts: { replicate, mountedBy, ballSet, day },
  }
  const done = await amendRecord(args, call.value, desk.outside)
  if (!done.ok) return complain(done.problems, desk, json)
  const { answerAmended } = await import('../amendAnswer.ts')
  desk.screen.out(answerAmended(done.value, json))
  return exitCodes.ok.code
}
