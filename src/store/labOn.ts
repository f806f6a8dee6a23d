import { attempt } from './attempt.ts'
import { checkLab } from './check.ts'
import { columnsOf } from './columns.ts'
import { copyLab } from './copyLab.ts'
import type { Engine } from './engine.ts'
import { historyOf } from './history.ts'
import type { Lab } from './lab.ts'
import { newEngine, placeOf } from './opening.ts'
import { papersIn } from './papersIn.ts'
import { recordsOf } from './recordsOf.ts'
import { resultsOf } from './resultsOf.ts'
import type { Migration } from './schema/migration.ts'
import { setupsOf } from './setups.ts'
import { tidyLab } from './tidy.ts'
import { titledThings } from './titledOf.ts'

/** The lab that a database holds. */
export const labOn = (engine: Engine, migrations: readonly Migration[]): Lab => ({
  where: engine.where,
  engine: engine.kind,
  readOnly: engine.readOnly,
  about: titledThings(engine, 'lab'),
  studies: titledThings(engine, 'study'),
  samples: titledThings(engine, 'sample'),
  setups: setupsOf(engine),
  records: recordsOf(engine),
  results: resultsOf(engine),
  columns: columnsOf(engine),
  ...papersIn(engine),
  history: historyOf(engine),
  check: (options = {}) => checkLab(engine, options),
  tidy: (before) => tidyLab(engine, before),
  backup: (to, progress) =>
    attempt(placeOf(to), async () => {
      const target = newEngine(to)
      try {
        return await copyLab(engine, target, { migrations, progress })
      } finally {
        await target.close()
      }
    }),
  close: () => engine.close(),
  [Symbol.asyncDispose]: () => engine.close(),
})
