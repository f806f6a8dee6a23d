import { sql } from 'kysely'
import type { Change } from '../change.ts'
import type { Engine } from '../engine.ts'
import { refuse } from '../storeProblem.ts'
import type { Migration } from './migration.ts'
import type { Reading, Writing } from './tables.ts'

/** Who brings a lab to a newer schema, and with which program. */
export interface Migrating {
  readonly change: Change
  readonly program: string
  /** Oldest first; the last one is what this program works with. */
  readonly migrations: readonly Migration[]
}

/** Version of the schema; 0 for a database without one. */
export async function schemaVersion(engine: Engine, on: Reading = engine.read): Promise<number> {
  const names = await tableNames(engine, on)
  if (!names.includes('migrations') || !names.includes('record_versions')) return 0 // others call a table migrations too
  const last = await on.selectFrom('migrations').select('version').orderBy('version', 'desc').executeTakeFirst()
  return last?.version ?? 0
}

async function tableNames({ kind }: Engine, on: Reading): Promise<string[]> {
  const query =
    kind === 'sqlite'
      ? sql<{ name: string }>`select name from sqlite_schema where type = 'table'`
      : sql<{ name: string }>`select tablename as name from pg_tables where schemaname = current_schema()`
  return (await query.execute(on)).rows.map(({ name }) => name)
}

/** Refuses a database in which there is a lab or anything else. */
export async function checkNew(engine: Engine, on: Reading): Promise<void> {
  const { place } = engine
  const mend = 'Name another place, or open the lab that is there.'
  if ((await schemaVersion(engine, on)) > 0) refuse('labExists', { place, what: 'There is a lab here already.', mend })
  const [strange] = await tableNames(engine, on)
  if (strange === undefined) return
  const what = `Other tables lie in this database already, "${strange}" among them.`
  refuse('folderNotEmpty', { place, what, mend: 'Name a database of its own for the lab.' })
}

/** Runs the statements of all steps above `from` up to `to`, without a note of it. */
export async function runSteps(
  engine: Engine,
  writing: Writing,
  { from, to, migrations }: { readonly from: number; readonly to: number; readonly migrations: readonly Migration[] },
): Promise<void> {
  for (const { version, statements } of migrations) {
    if (version <= from || version > to) continue
    for (const statement of statements(engine.kind)) await sql.raw(statement).execute(writing)
  }
}

/** Runs the steps that the lab lacks and notes who did it, within one transaction. */
export async function migrate(
  engine: Engine,
  writing: Writing,
  { change, program, migrations }: Migrating,
): Promise<void> {
  const from = await schemaVersion(engine, writing)
  const to = migrations.at(-1)?.version ?? 0
  await runSteps(engine, writing, { from, to, migrations })
  const { at, who } = change
  const notes = migrations.filter(({ version }) => version > from)
  const rows = notes.map(({ version, name }) => ({ version, name, at, who, program }))
  if (rows.length > 0) await writing.insertInto('migrations').values(rows).execute()
}

/**
 * Brings a lab to the schema of this program. `saveBefore` makes the copy that is taken first.
 * All of it happens or nothing; a lab of a newer program is left alone.
 */
export async function bringUp(
  engine: Engine,
  migrating: Migrating,
  saveBefore: (version: number) => Promise<void>,
): Promise<void> {
  const known = migrating.migrations.at(-1)?.version ?? 0
  const found = await schemaVersion(engine)
  if (found === known) return
  checkVersion(found, known, engine)
  await engine.write(async (writing) => {
    if ((await schemaVersion(engine, writing)) === known) return // another process was faster
    await saveBefore(known)
    await migrate(engine, writing, migrating)
  })
}

/** Refuses a database without a schema and one of a newer program. */
export function checkVersion(found: number, known: number, { place, unfinished }: Engine): void {
  if (found === 0 && unfinished) {
    refuse('labUnfinished', {
      place,
      what: 'There is no lab here, or the making of it was broken off.',
      mend: 'Make it again in the same place.',
    })
  }
  if (found === 0) {
    refuse('labDamaged', {
      place,
      what: 'The database of this lab is empty.',
      mend: 'Restore the lab from its latest backup into a new place; leave this one as it is.',
    })
  }
  if (found > known) {
    refuse('labNewer', {
      place,
      what: `A newer program made this lab: its schema has version ${found}, this program knows ${known}.`,
      mend: 'Update the program; the lab was left as it is.',
    })
  }
}
