import type { Outcome } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { checkedIdentifier } from './identifier.ts'
import type { Lab } from './lab.ts'
import { labOn } from './labOn.ts'
import { newEngine, type Opening, placeOf, wholeOpening } from './opening.ts'
import { checkNew, migrate } from './schema/migrate.ts'
import type { NewTitled } from './titled.ts'
import { addTitled } from './titledRows.ts'

/**
 * Makes a lab in a folder that is empty or not there yet, or in an empty PostgreSQL database.
 * It becomes one in one instant; what a broken-off attempt left is used again.
 */
export function newLab(where: string, thing: NewTitled, opening: Opening): Promise<Outcome<Lab>> {
  return attempt(placeOf(where), async () => {
    checkedIdentifier(thing.id, 'lab')
    const whole = wholeOpening(opening)
    const engine = newEngine(where, whole.patience)
    try {
      await engine.write(async (writing) => {
        await checkNew(engine, writing)
        await migrate(engine, writing, whole)
        await addTitled(writing, { kind: 'lab', thing, change: whole.change })
      })
      engine.finish()
      return labOn(engine, whole.migrations)
    } catch (error) {
      await engine.close()
      throw error
    }
  })
}
