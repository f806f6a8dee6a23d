import type { Outcome, Progress } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { type CopyReport, copyLab } from './copyLab.ts'
import { newEngine, openEngine, placeOf } from './opening.ts'
import { checkVersion, schemaVersion } from './schema/migrate.ts'
import type { Migration } from './schema/migration.ts'
import { migrations as all } from './schema/migrations.ts'

export interface Restoring {
  readonly progress?: Progress
  readonly migrations?: readonly Migration[]
}

/**
 * Copies a backup, or any lab, into a new folder or an empty database; this is also the way from one kind to the other.
 * The source is only read. The copy has the schema of the source; `openLab` brings it up where that is older.
 */
export function restoreLab(
  from: string,
  to: string,
  { progress, migrations = all }: Restoring = {},
): Promise<Outcome<CopyReport>> {
  return attempt(placeOf(to), async () => {
    const source = openEngine(from)
    try {
      checkVersion(await schemaVersion(source), migrations.at(-1)?.version ?? 0, source)
      const target = newEngine(to)
      try {
        return await copyLab(source, target, { migrations, progress })
      } finally {
        await target.close()
      }
    } finally {
      await source.close()
    }
  })
}
