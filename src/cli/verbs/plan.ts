import type { HeldRecord } from '../../bench/plan/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { keptMappings } from '../keptMappings.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly sheet?: string
  readonly answers?: string
  readonly against?: string
  readonly setup?: string
  readonly json?: true
}

export const planVerb: Verb = {
  name: 'plan',
  summary: 'see what can be measured before a sample is touched',
  description:
    'From a question to a plan and a run sheet: at which speeds and loads friction can be measured, with which load, steps ' +
    'and dwell, how uncertain the points will be, whether the film will carry, how many replicates decide and in which ' +
    'order. With --against a record is held against its plan.',
  examples: [
    'kufe plan question.yaml',
    'kufe plan question.yaml --sheet run-sheet.pdf',
    'kufe plan question.yaml --against drawer-b.csv --setup drawer.yaml',
  ],
  define: (command, run) => {
    command
      .argument('<question>', 'what is to be found out, with which rig, fixture and pair (YAML)')
      .option(
        '--sheet <file>',
        'write the run sheet: a page to print, a PDF or JSON where the name ends in .pdf or .json',
      )
      .option('--answers <file>', 'what was read at the checks of the run sheet (YAML or JSON)')
      .option('--against <record>', 'hold this record against the plan; needs --setup')
      .option('-s, --setup <file>', 'the setup of that record')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((file: string, options: Options) => run((desk) => plan(file, options, desk)))
  },
}

async function plan(file: string, options: Options, desk: Desk): Promise<number> {
  const { heldRecord, planFile, planSheet, planText, writeSheet } = await import('../../bench/plan/index.ts')
  const json = options.json === true
  const planned = await planFile(file)
  if (!planned.ok) return complain(planned.problems, desk, json)
  const sheet = await planSheet(planned.value, options.answers)
  if (!sheet.ok) return complain(sheet.problems, desk, json)
  let record: HeldRecord | null = null
  if (options.against !== undefined) {
    const reading = { units: [], columns: [], mappings: keptMappings(desk.environment) }
    const args = { file: options.against, setup: options.setup, reading, options: {} }
    const held = await heldRecord(planned.value, args, desk.outside)
    if (!held.ok) return complain(held.problems, desk, json)
    record = held.value
  }
  if (options.sheet !== undefined) {
    const written = await writeSheet(options.sheet, sheet.value)
    if (!written.ok) return complain(written.problems, desk, json)
  }
  const { planAnswer } = await import('../show/planAnswer.ts')
  const answer = { planned: planned.value, sheet: sheet.value, record, sheetFile: options.sheet }
  desk.screen.out(json ? planText(planned.value, { sheet: sheet.value, record }) : planAnswer(answer, desk.screen))
  const found =
    !planned.value.plan.suggestion.possible ||
    sheet.value.answers?.some(({ state }) => state === 'outside') === true ||
    (record !== null && record.held.failures.length > 0)
  return found ? exitCodes.finding.code : exitCodes.ok.code
}
