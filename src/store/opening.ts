import type { Place } from '../core/terms/index.ts'
import type { Change } from './change.ts'
import type { Engine } from './engine.ts'
import { isDatabaseAddress, withoutPassword } from './postgres/address.ts'
import { DatabaseEngine } from './postgres/databaseEngine.ts'
import type { Migration } from './schema/migration.ts'
import { migrations } from './schema/migrations.ts'
import { newFolder, openFolder } from './sqlite/folderEngine.ts'

/** What has to be known to open a lab. */
export interface Opening {
  /** Who opens it, when and why: noted when the lab is brought to the schema of a newer program. */
  readonly change: Change
  /** Name and version of the program. */
  readonly program: string
  /** How long a writer waits for another one, ms. */
  readonly patience?: number
  /** New folder for the copy that is made of a database before its schema changes. A folder lab keeps it within. */
  readonly backupTo?: string
  /** Steps of the schema; a test may know more of them. */
  readonly migrations?: readonly Migration[]
}

const defaultPatience = 10_000

/** The opening with its defaults. */
export const wholeOpening = (opening: Opening) => ({
  ...opening,
  migrations: opening.migrations ?? migrations,
  patience: opening.patience ?? defaultPatience,
})

/** The database of a lab that is there. */
export const openEngine = (where: string, patience = defaultPatience): Engine =>
  isDatabaseAddress(where) ? new DatabaseEngine(where, patience) : openFolder(where, patience)

/** A place for a lab that is to be made. */
export const newEngine = (where: string, patience = defaultPatience): Engine =>
  isDatabaseAddress(where) ? new DatabaseEngine(where, patience) : newFolder(where, patience)

/** Where to say that something is wrong with it. */
export const placeOf = (where: string): Place =>
  isDatabaseAddress(where) ? { name: withoutPassword(where) } : { file: where }
