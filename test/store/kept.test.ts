import { DatabaseSync } from 'node:sqlite'
import pg from 'pg'
import { describe, expect, test } from 'vitest'
import { keptTables } from '../../src/store/schema/tables.ts'
import { change, engines, freshLab, rawBytes, value } from './engines.ts'

/** Runs statements as anybody could who has the database, past the store. */
async function byHand(where: string): Promise<(statement: string) => Promise<unknown[]>> {
  if (where.startsWith('postgres')) {
    return async (statement) => {
      const client = new pg.Client({ connectionString: where })
      await client.connect()
      try {
        return (await client.query(statement)).rows
      } finally {
        await client.end()
      }
    }
  }
  return async (statement) => {
    const database = new DatabaseSync(`${where}/kufe.sqlite`)
    try {
      return database.prepare(statement).all()
    } finally {
      database.close()
    }
  }
}

/** A lab with at least one row in every table. */
async function fullLab(where: string): Promise<void> {
  const lab = await freshLab(where)
  value(await lab.studies.add({ id: 's', title: 'S' }, change(1)))
  value(await lab.samples.add({ id: 'a', title: 'A' }, change(1)))
  const { setup } = value(await lab.setups.add('rig: one\n', change(1)))
  const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(2)))
  const origin = { raw: record.id, setup: setup.sha256, options: {}, program: 'kufe 0.1.0', seed: 1 }
  value(await lab.results.add([{ kind: 'fit', origin, text: '{}' }], change(3)))
  const files = { parquet: rawBytes(2), pyramid: rawBytes(3) }
  value(await lab.columns.put([{ raw: record.id, reading: 'r', rows: 1, program: 'kufe 0.1.0', ...files }]))
  const place = { subject: 'study', subjectId: 's', kind: 'question' } as const
  value(await lab.keepPaper({ ...place, content: {}, after: 0 }, change(4)))
  await lab.close()
}

describe.each(engines)('what was kept on $name', ({ name, place }) => {
  test('cannot be changed, removed or replaced, not even by hand', async () => {
    const where = await place()
    await fullLab(where)
    const run = await byHand(where)
    const tables = [...keptTables.map(([table]) => table), ...(name === 'postgres' ? ['raw_parts'] : [])]
    for (const table of tables) {
      const rows = await run(`select * from ${table}`)
      const [column] = Object.keys(rows[0] as object)
      const attempts = [
        `update ${table} set ${column} = ${column}`,
        `delete from ${table}`,
        name === 'sqlite' ? `insert or replace into ${table} select * from ${table}` : `truncate ${table} cascade`,
      ]
      for (const attempt of attempts) {
        await expect(run(attempt), attempt).rejects.toThrow('rows are kept as they are')
      }
      expect(await run(`select * from ${table}`)).toEqual(rows)
    }
  })

  test('is every table but those that can be made again', async () => {
    const where = await place()
    await fullLab(where)
    const run = await byHand(where)
    const query =
      name === 'sqlite'
        ? "select name from sqlite_schema where type = 'table'"
        : 'select tablename as name from pg_tables where schemaname = current_schema()'
    const tables = (await run(query)).map((row) => (row as { name: string }).name)
    const derived = ['columns', ...(name === 'postgres' ? ['column_parts'] : [])]
    const parts = name === 'postgres' ? ['raw_parts'] : []
    expect(tables.sort()).toEqual([...keptTables.map(([table]) => table), ...derived, ...parts].sort())
  })

  test('has versions without a gap that name what they supersede', async () => {
    const where = await place()
    await fullLab(where)
    const run = await byHand(where)
    for (const [version, supersedes] of [
      [3, 2],
      [2, 'null'],
      [2, 2],
      [0, 'null'],
      [1, 'null'],
    ]) {
      const row = `insert into sample_versions (id, version, supersedes, title, note, facts, change)
        values ('a', ${version}, ${supersedes}, 't', '', '{}', 1)`
      await expect(run(row), row).rejects.toThrow()
    }
    await expect(
      run(`insert into sample_versions (id, version, supersedes, title, note, facts, change)
      values ('a', 2, 1, 't', '', '{}', 1) returning id`),
    ).resolves.toHaveLength(1)
  })
})
