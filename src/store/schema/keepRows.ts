/** Which database holds a lab. */
export type EngineKind = 'sqlite' | 'postgres'

/**
 * Statements after which no row of these tables can be changed or removed, not even by hand.
 * Each table comes with its key: SQLite's `insert or replace` removes a row without asking the other guards.
 */
export function keepRows(engine: EngineKind, tables: Readonly<Record<string, readonly string[]>>): string[] {
  const entries = Object.entries(tables)
  return engine === 'sqlite'
    ? entries.flatMap(([table, key]) => sqliteGuards(table, key))
    : [refusal, ...entries.map(([table]) => postgresGuard(table))]
}

const words = 'rows are kept as they are: add a new version instead'

function sqliteGuards(table: string, key: readonly string[]): string[] {
  const no = `begin select raise(abort, '${table}: ${words}'); end`
  const same = key.map((column) => `${column} = new.${column}`).join(' and ')
  return [
    `create trigger ${table}_no_update before update on ${table} ${no}`,
    `create trigger ${table}_no_delete before delete on ${table} ${no}`,
    `create trigger ${table}_no_replace before insert on ${table}
      when exists (select 1 from ${table} where ${same}) ${no}`,
  ]
}

const refusal = `create or replace function refuse_change() returns trigger language plpgsql as
  $$ begin raise exception '%: ${words}', tg_table_name; end $$`

const postgresGuard = (table: string): string =>
  `create trigger ${table}_kept before update or delete or truncate on ${table}
    for each statement execute function refuse_change()`
