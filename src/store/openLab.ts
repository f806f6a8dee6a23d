import type { Outcome } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { copyLab } from './copyLab.ts'
import type { Engine } from './engine.ts'
import type { Lab } from './lab.ts'
import { labOn } from './labOn.ts'
import { newEngine, type Opening, openEngine, placeOf, wholeOpening } from './opening.ts'
import { bringUp } from './schema/migrate.ts'
import type { Migration } from './schema/migration.ts'
import { FolderEngine } from './sqlite/folderEngine.ts'
import { refuse } from './storeProblem.ts'

/**
 * Opens a lab: the path of a folder, or an address `postgres://…`.
 * One that an older program made is brought to the schema of this one, a copy first; one of a newer program is left alone.
 */
export function openLab(where: string, opening: Opening): Promise<Outcome<Lab>> {
  return attempt(placeOf(where), async () => {
    const whole = wholeOpening(opening)
    const engine = openEngine(where, whole.patience)
    try {
      await bringUp(engine, whole, (version) => saveBefore(engine, version, whole))
      if (engine.unfinished && !engine.readOnly) engine.finish() // its maker was killed after the last moment that mattered
      return labOn(engine, whole.migrations)
    } catch (error) {
      await engine.close()
      throw error
    }
  })
}

interface Saving {
  readonly migrations: readonly Migration[]
  readonly backupTo?: string
}

/** Copies the lab before its schema changes. A folder has a place for it; for a database somebody has to name one. */
async function saveBefore(engine: Engine, version: number, { migrations, backupTo }: Saving): Promise<void> {
  if (engine instanceof FolderEngine) return engine.copyBefore(version)
  if (backupTo === undefined) {
    return refuse('labOlder', {
      place: engine.place,
      what: `An older program made this lab; its schema has to be brought to version ${version}.`,
      mend: 'Name a new folder for the backup that is made first.',
    })
  }
  const target = newEngine(backupTo)
  try {
    await copyLab(engine, target, { migrations })
  } finally {
    await target.close()
  }
}
