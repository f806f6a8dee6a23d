import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, type LabOptions, lookingCall } from '../labOptions.ts'
import type { Desk, Verb } from '../verb.ts'

const things = ['records', 'studies', 'samples', 'history'] as const

type Thing = (typeof things)[number]

interface Options extends LabOptions {
  readonly study?: string
  readonly sample?: string
}

export const listVerb: Verb = {
  name: 'list',
  summary: 'see what a lab holds',
  description:
    'Lists the records of a lab with what people say about them and by which version of the program they were reduced; or its ' +
    'studies, its samples, or its whole history of who did what, when and why.',
  examples: ['kufe list', 'kufe list --study drawer-runners', 'kufe list history --lab kufe-lab'],
  define: (command, run) => {
    command.addArgument(
      command
        .createArgument('[what]', 'what to list')
        .choices([...things])
        .default('records'),
    )
    addLabOption(command)
      .option('--study <id>', 'only records of this study')
      .option('--sample <id>', 'only records of this sample')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((what: Thing, options: Options) => run((desk) => listed(what, options, desk)))
  },
}

async function listed(what: Thing, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await lookingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { labHistory, listLab } = await import('../../bench/lab/index.ts')
  const { answerHistory, answerList } = await import('../listAnswer.ts')
  if (what === 'history') {
    const history = await labHistory(call.value, desk.outside)
    if (!history.ok) return complain(history.problems, desk, json)
    desk.screen.out(answerHistory(history.value, json))
    return exitCodes.ok.code
  }
  const { study, sample } = options
  const found = await listLab({ study, sample }, call.value, desk.outside)
  if (!found.ok) return complain(found.problems, desk, json)
  desk.screen.out(answerList(what, found.value, json))
  return exitCodes.ok.code
}
