import { programOf } from './program.ts'
import type { Verb } from './verb.ts'
import { completionVerb } from './verbs/completion.ts'
import { coverageVerb } from './verbs/coverage.ts'
import { demoVerb } from './verbs/demo.ts'
import { fitVerb } from './verbs/fit.ts'
import { planVerb } from './verbs/plan.ts'
import { reduceVerb } from './verbs/reduce.ts'
import { setupVerb } from './verbs/setup.ts'
import { simulateVerb } from './verbs/simulate.ts'

/** In the order in which a newcomer meets them. */
export const allVerbs: readonly Verb[] = [
  demoVerb,
  planVerb,
  setupVerb,
  reduceVerb,
  fitVerb,
  simulateVerb,
  coverageVerb,
  completionVerb,
]

/** Every verb with its help text exactly as the program prints it. Loads no room behind the verbs. */
export const verbs: readonly { readonly name: string; readonly help: string }[] = allVerbs.map(({ name }) => ({
  name,
  get help() {
    const program = programOf(allVerbs, { version: '', run: () => {} })
    return program.commands.find((command) => command.name() === name)?.helpInformation() ?? ''
  },
}))
