import { DatabaseSync } from 'node:sqlite'
import { pathToFileURL } from 'node:url'

/**
 * `write` may change the lab, `read` may not. `immutable` is for a folder that we may not write to and in which nobody
 * works: without it SQLite would want to make files beside the database even for reading.
 */
type ConnectionMode = 'write' | 'read' | 'immutable'

/** How long one statement waits for another process, ms. Whoever begins to write waits longer, without blocking this process. */
const statementPatience = 250

/** Opens the database file with all safeguards on; the file must exist. */
export function openConnection(file: string, mode: ConnectionMode): DatabaseSync {
  const address = pathToFileURL(file)
  if (mode === 'immutable') address.searchParams.set('immutable', '1')
  const database = new DatabaseSync(address, { readOnly: mode !== 'write', timeout: statementPatience })
  database.enableDefensive(true)
  // FULL: a commit waits for the disk. Triggers also guard rows that a replacement would remove.
  database.exec('pragma foreign_keys = on; pragma recursive_triggers = on; pragma synchronous = full')
  database.exec('pragma trusted_schema = off')
  return database
}
