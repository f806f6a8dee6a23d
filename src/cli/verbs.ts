import { programOf } from './program.ts'
import type { Verb } from './verb.ts'
import { addVerb } from './verbs/add.ts'
import { amendVerb } from './verbs/amend.ts'
import { backupVerb } from './verbs/backup.ts'
import { breakawayVerb } from './verbs/breakaway.ts'
import { comparableVerb } from './verbs/comparable.ts'
import { compareVerb } from './verbs/compare.ts'
import { completionVerb } from './verbs/completion.ts'
import { coverageVerb } from './verbs/coverage.ts'
import { demoVerb } from './verbs/demo.ts'
import { errorRatesVerb } from './verbs/errorRates.ts'
import { exportVerb } from './verbs/export.ts'
import { fitVerb } from './verbs/fit.ts'
import { holdVerb } from './verbs/hold.ts'
import { importVerb } from './verbs/import.ts'
import { labVerb } from './verbs/lab.ts'
import { limitVerb } from './verbs/limit.ts'
import { listVerb } from './verbs/list.ts'
import { loopVerb } from './verbs/loop.ts'
import { masterVerb } from './verbs/master.ts'
import { materialVerb } from './verbs/material.ts'
import { planVerb } from './verbs/plan.ts'
import { reduceVerb } from './verbs/reduce.ts'
import { reportVerb } from './verbs/report.ts'
import { restoreVerb } from './verbs/restore.ts'
import { rigWatchVerb } from './verbs/rigWatch.ts'
import { roundVerb } from './verbs/round.ts'
import { runInVerb } from './verbs/runIn.ts'
import { scatterVerb } from './verbs/scatter.ts'
import { seriesVerb } from './verbs/series.ts'
import { serveVerb } from './verbs/serve.ts'
import { setupVerb } from './verbs/setup.ts'
import { showVerb } from './verbs/show.ts'
import { simulateVerb } from './verbs/simulate.ts'
import { stickSlipVerb } from './verbs/stickSlip.ts'
import { turnMapVerb } from './verbs/turnMap.ts'
import { uncertaintyVerb } from './verbs/uncertainty.ts'
import { verdictRatesVerb } from './verbs/verdictRates.ts'
import { verifyVerb } from './verbs/verify.ts'
import { watchVerb } from './verbs/watch.ts'
import { wearVerb } from './verbs/wear.ts'

/** In the order in which a newcomer meets them. */
export const allVerbs: readonly Verb[] = [
  demoVerb,
  planVerb,
  materialVerb,
  setupVerb,
  reduceVerb,
  fitVerb,
  breakawayVerb,
  holdVerb,
  runInVerb,
  loopVerb,
  seriesVerb,
  stickSlipVerb,
  wearVerb,
  turnMapVerb,
  masterVerb,
  labVerb,
  addVerb,
  watchVerb,
  listVerb,
  showVerb,
  compareVerb,
  limitVerb,
  scatterVerb,
  rigWatchVerb,
  comparableVerb,
  roundVerb,
  uncertaintyVerb,
  reportVerb,
  amendVerb,
  verifyVerb,
  serveVerb,
  exportVerb,
  importVerb,
  backupVerb,
  restoreVerb,
  simulateVerb,
  coverageVerb,
  errorRatesVerb,
  verdictRatesVerb,
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
