import type { HeldRecord } from '../../bench/plan/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { keptMappings } from '../keptMappings.ts'
import { addLabOption, type LabOptions } from '../labOptions.ts'
import { addOwnOption, ownPlaces } from '../ownOptions.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options extends LabOptions {
  readonly own: readonly string[]
  readonly starter?: string
  readonly out?: string
  readonly force?: true
  readonly sheet?: string
  readonly laws?: true
  readonly answers?: string
  readonly against?: string
  readonly setup?: string
}

export const planVerb: Verb = {
  name: 'plan',
  summary: 'see what can be measured before a sample is touched',
  description:
    'From a question to a plan and a run sheet: at which speeds and loads friction can be measured, with which load, steps ' +
    'and dwell, how uncertain the points will be, whether the film will carry, how many replicates decide and in which ' +
    'order. With --against a record is held against its plan.',
  examples: [
    'kufe plan --starter balls-on-plate --out question.yaml',
    'kufe plan question.yaml',
    'kufe plan question.yaml --sheet run-sheet.pdf',
    'kufe plan question.yaml --against drawer-b.csv --setup drawer.yaml',
  ],
  define: (command, run) => {
    command
      .argument('[question]', 'what is to be found out, with which rig, fixture and pair (YAML)')
      .option(
        '--sheet <file>',
        'write the run sheet: a page to print, a PDF or JSON where the name ends in .pdf or .json',
      )
      .option('--answers <file>', 'what was read at the checks of the run sheet (YAML or JSON)')
      .option('--laws', 'tell of each number by which law it was reckoned, where that holds and what to doubt')
      .option('--against <record>', 'hold this record against the plan; needs --setup')
      .option('-s, --setup <file>', 'the setup of that record')
    addLabOption(addOwnOption(command))
      .optionsGroup('Starting a question:')
      .option(
        '--starter <fixture>',
        'begin a question: balls-on-plate, ball-on-plates, ball-on-balls, ring-on-plate, disc-on-plate or pins-on-disc',
      )
      .option('-o, --out <file>', 'write the starter into this file instead of on standard output')
      .option('--force', 'write over a file that is there already')
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((file: string | undefined, options: Options) => run((desk) => plan(file, options, desk)))
  },
}

async function plan(file: string | undefined, options: Options, desk: Desk): Promise<number> {
  if (options.starter !== undefined) return starter(options.starter, options, desk)
  if (file === undefined) return complain([noQuestion], desk, options.json === true)
  const { heldRecord, planFile, planSheet, planText, writeSheet } = await import('../../bench/plan/index.ts')
  const json = options.json === true
  const places = await ownPlaces(options, desk)
  if (!places.ok) return complain(places.problems, desk, json)
  const { ownThings } = await import('../../bench/material/index.ts')
  const own = await ownThings(places.value, desk.outside)
  if (!own.ok) return complain(own.problems, desk, json)
  const planned = await planFile(file, own.value)
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
  const answer = {
    planned: planned.value,
    sheet: sheet.value,
    record,
    sheetFile: options.sheet,
    why: options.laws === true,
  }
  desk.screen.out(json ? planText(planned.value, { sheet: sheet.value, record }) : planAnswer(answer, desk.screen))
  const found =
    !planned.value.plan.suggestion.possible ||
    sheet.value.answers?.some(({ state }) => state === 'outside') === true ||
    (record !== null && record.held.failures.length > 0)
  return found ? exitCodes.finding.code : exitCodes.ok.code
}

async function starter(word: string, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const { starterQuestion, writeNew } = await import('../../bench/index.ts')
  const { starterWritten } = await import('../show/starterWritten.ts')
  const text = starterQuestion(word, options.out ?? '')
  if (!text.ok) return complain(text.problems, desk, json)
  if (options.out !== undefined) {
    const written = writeNew(options.out, text.value, options.force === true)
    if (!written.ok) return complain(written.problems, desk, json)
  }
  desk.screen.out(starterWritten(text.value, options, (file) => `kufe plan ${file}`))
  return exitCodes.ok.code
}

const noQuestion = {
  kind: 'questionNotNamed',
  class: 'wrongUse' as const,
  place: {},
  what: 'No question is named.',
  mend: 'Name its file, or begin one: kufe plan --starter balls-on-plate --out question.yaml.',
}
