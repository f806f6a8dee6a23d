import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import type { Desk, Verb } from '../verb.ts'

interface Options {
  readonly json?: true
}

export const planVerb: Verb = {
  name: 'plan',
  summary: 'see what can be measured before a sample is touched',
  description:
    'From a question to a plan: at which speeds and loads friction can be measured, with which load, steps and dwell, how ' +
    'uncertain the points will be, whether the film will carry, how many replicates decide and in which order.',
  examples: ['kufe plan question.yaml', 'kufe plan question.yaml --json > plan.json'],
  define: (command, run) => {
    command
      .argument('<question>', 'what is to be found out, with which rig, fixture and pair (YAML)')
      .option('--json', 'answer for machines: JSON on standard output')
      .action((file: string, options: Options) => run((desk) => plan(file, options, desk)))
  },
}

async function plan(file: string, options: Options, desk: Desk): Promise<number> {
  const { planFile, planText } = await import('../../bench/plan/index.ts')
  const planned = await planFile(file)
  if (!planned.ok) return complain(planned.problems, desk, options.json === true)
  const { planInWords } = await import('../show/planInWords.ts')
  desk.screen.out(options.json === true ? planText(planned.value) : planInWords(planned.value, desk.screen))
  return planned.value.plan.suggestion.possible ? exitCodes.ok.code : exitCodes.finding.code
}
