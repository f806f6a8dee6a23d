import { AddAnswer } from '../addAnswer.ts'
import { type AddOptions, addArgs, addFactOptions, addPlaceOptions, addReplicateOption } from '../addOptions.ts'
import { complain } from '../complain.ts'
import { changingCall } from '../labOptions.ts'
import { addReduceOptions, addTableOptions } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends AddOptions {
  readonly answers?: string
}

export const addVerb: Verb = {
  name: 'add',
  summary: 'keep records in a lab, reduced and fitted',
  description:
    'Keeps records in a lab, then reduces and fits them. What is told as kept is on the disk. A file that is no record ' +
    'is told with all its problems, and the others go on. The same bytes are recognised, whatever the file is called; ' +
    'after a stop the same command goes on where it stopped.',
  examples: [
    'kufe add drawer-b.csv --setup drawer.yaml --sample "lacquer B" --replicate 1',
    'kufe add lacquer-b-1.csv lacquer-b-2.csv lacquer-b-3.csv --setup drawer.yaml --replicate 1',
    'kufe add monday/ --lab kufe-lab --study drawer-runners --by MK',
  ],
  define: (command, run) => {
    command.argument('<paths...>', 'records, or folders of records')
    addReplicateOption(
      addFactOptions(addPlaceOptions(command)),
      'replicate of the first record; the next ones count up',
    )
    addReduceOptions(addTableOptions(command))
      .optionsGroup('Run sheet:')
      .option(
        '--answers <file>',
        'the filled run sheet (JSON, as "kufe plan" writes it) of the one record that is added',
      )
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: what became of each file, as JSON')
      .action((paths: readonly string[], options: Options) => run((desk) => added(paths, options, desk)))
  },
}

async function added(paths: readonly string[], options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { addRecords } = await import('../../bench/lab/index.ts')
  const answer = new AddAnswer(desk, json)
  const words = { ...addArgs(options, desk), paths, answers: options.answers }
  const done = await addRecords(words, call.value, { outside: desk.outside, onAdd: answer.onAdd })
  return done.ok ? answer.end(done.value) : complain(done.problems, desk, json)
}
