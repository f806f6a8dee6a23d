import { Kysely, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import { TableBytes } from '../bytes/tableBytes.ts'
import type { Engine } from '../engine.ts'
import type { Reading, Tables, Writing } from '../schema/tables.ts'
import { withoutPassword } from './address.ts'

/** Connections that one process holds at most. */
const connections = 4

/** How long a server may take to answer the first time, ms. */
const connectPatience = 10_000

/** Counts and checksums are below 2⁵³, so a bigint may come as a number. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (id, format) =>
    id === pg.types.builtins.INT8 ? (text: string) => Number(text) : pg.types.getTypeParser(id, format),
}

/** A lab in a PostgreSQL database, rows and bytes alike. A schema set in the address (`?options=-c search_path=…`) is respected. */
export class DatabaseEngine implements Engine {
  readonly kind = 'postgres'
  readonly where: string
  readonly place: { readonly name: string }
  readonly readOnly = false // the server decides, at each write
  readonly unfinished = true
  readonly read: Reading
  readonly raw: TableBytes
  readonly columns: TableBytes
  readonly #kysely: Kysely<Tables>
  readonly #patience: number

  constructor(address: string, patience: number) {
    this.where = withoutPassword(address)
    this.place = { name: this.where }
    this.#patience = patience
    const pool = new pg.Pool({
      connectionString: address,
      max: connections,
      connectionTimeoutMillis: connectPatience,
      types,
    })
    // A connection that breaks says so to whoever uses it next; without a listener it would end the process.
    pool.on('error', () => {})
    pool.on('connect', (client) => client.on('error', () => {}))
    this.#kysely = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
    this.read = this.#kysely
    this.raw = new TableBytes(this.read, 'raw_parts')
    this.columns = new TableBytes(this.read, 'column_parts')
  }

  write<T>(act: (writing: Writing) => Promise<T>): Promise<T> {
    return this.#kysely.transaction().execute(async (writing) => {
      // A server may have been told to answer before the disk has; then "kept" would not mean kept.
      await sql`select set_config('lock_timeout', ${String(this.#patience)}, true),
        case when current_setting('synchronous_commit') = 'off' then set_config('synchronous_commit', 'on', true) end`.execute(
        writing,
      )
      await sql`select pg_advisory_xact_lock(hashtext('kufe ' || current_schema()))`.execute(writing)
      return act(writing)
    })
  }

  snapshot<T>(act: (reading: Writing) => Promise<T>): Promise<T> {
    return this.#kysely.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(act)
  }

  finish(): void {} // tables come and go in a transaction: nothing is ever half made

  close(): Promise<void> {
    return this.#kysely.destroy()
  }
}
