import type { DatabaseSync, SQLInputValue, StatementSync } from 'node:sqlite'
import { setTimeout } from 'node:timers/promises'
import {
  type CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  type QueryResult,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'

interface DialectOptions {
  /** `begin immediate` where the transaction will write: it then either holds the lock or never began. */
  readonly begin: 'begin' | 'begin immediate'
  /** How long a transaction waits for the lock, ms. */
  readonly patience: number
}

/** Kysely on Node's own SQLite: one connection, its statements kept prepared. */
export const nodeSqliteDialect = (database: DatabaseSync, options: DialectOptions): Dialect => ({
  createDriver: () => new NodeSqliteDriver(database, options),
  createQueryCompiler: () => new SqliteQueryCompiler(),
  createAdapter: () => new SqliteAdapter(),
  createIntrospector: (db) => new SqliteIntrospector(db),
})

/** Pause between two tries for the lock, ms. */
const pause = 10

class NodeSqliteDriver implements Driver {
  readonly #database: DatabaseSync
  readonly #connection: NodeSqliteConnection
  readonly #options: DialectOptions

  constructor(database: DatabaseSync, options: DialectOptions) {
    this.#database = database
    this.#connection = new NodeSqliteConnection(database)
    this.#options = options
  }

  async init(): Promise<void> {}

  async acquireConnection(): Promise<DatabaseConnection> {
    return this.#connection
  }

  /** SQLite's own waiting would stop the whole process, so it waits briefly and we wait between. */
  async beginTransaction(): Promise<void> {
    for (const end = performance.now() + this.#options.patience; ; ) {
      try {
        this.#database.exec(this.#options.begin)
        return
      } catch (error) {
        if (!isBusy(error) || performance.now() >= end) throw error
      }
      await setTimeout(pause)
    }
  }

  async commitTransaction(): Promise<void> {
    this.#database.exec('commit')
  }

  /** SQLite has rolled back by itself after some errors, a full disk among them. */
  async rollbackTransaction(): Promise<void> {
    if (this.#database.isTransaction) this.#database.exec('rollback')
  }

  async releaseConnection(): Promise<void> {}

  /** Kysely calls this only after a first query, so whoever opened the database closes it. */
  async destroy(): Promise<void> {}
}

const isBusy = (error: unknown): boolean =>
  error instanceof Error && 'errcode' in error && (Number(error.errcode) & 0xff) === 5

/** Statements kept; more than the store has of any one shape. */
const keptStatements = 100

class NodeSqliteConnection implements DatabaseConnection {
  readonly #database: DatabaseSync
  readonly #statements = new Map<string, StatementSync>()

  constructor(database: DatabaseSync) {
    this.#database = database
  }

  async executeQuery<R>({ sql, parameters }: CompiledQuery): Promise<QueryResult<R>> {
    const statement = this.#prepared(sql)
    const values = parameters as SQLInputValue[] // the tables hold text, numbers, bytes and null
    if (statement.columns().length > 0) return { rows: statement.all(...values) as R[] } // as typed by the query
    return { rows: [], numAffectedRows: BigInt(statement.run(...values).changes) }
  }

  streamQuery<R>(): AsyncIterableIterator<QueryResult<R>> {
    throw new RangeError('an open stream would hold the lab as it was: read in pages instead')
  }

  #prepared(sql: string): StatementSync {
    const known = this.#statements.get(sql)
    if (known !== undefined) return known
    if (this.#statements.size >= keptStatements) this.#statements.clear()
    const statement = this.#database.prepare(sql)
    this.#statements.set(sql, statement)
    return statement
  }
}
