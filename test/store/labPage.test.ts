import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { expect, test } from 'vitest'
import { keptTables } from '../../src/store/schema/tables.ts'
import { change, folderEngine, freshLab, rawBytes, value } from './engines.ts'

const page = readFileSync(join(import.meta.dirname, '../../docs/lab.md'), 'utf8')

/** First cells of the table under a heading, without the back quotes; `more` picks what else a row says. */
function cells(heading: string): [string, string][] {
  const section = page.split(`## ${heading}\n`)[1].split('\n## ')[0]
  const rows = section.split('\n').filter((line) => line.startsWith('| `'))
  return rows.flatMap((row) => {
    const [, names, , last] = row.split('|').map((cell) => cell.trim())
    return names.split(', ').map((name): [string, string] => [name.replaceAll('`', ''), last ?? ''])
  })
}

test('docs/lab.md lists the tables of a lab, and which are kept for ever', async () => {
  const where = await folderEngine.place()
  await (await freshLab(where)).close()
  const database = new DatabaseSync(join(where, 'kufe.sqlite'))
  const tables = database
    .prepare("select name from sqlite_schema where type = 'table'")
    .all()
    .map(({ name }) => name)
  database.close()
  const kept = new Set<string>(keptTables.map(([table]) => table))
  expect(cells('The tables').sort()).toEqual(tables.map((name) => [name, kept.has(String(name)) ? 'yes' : 'no']).sort())
})

test('docs/lab.md lists the files of a lab folder', async () => {
  const where = await folderEngine.place()
  const lab = await freshLab(where)
  const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const listed = cells('A folder').map(([name]) => name.replace('ab/abcdef…', `${record.id.slice(0, 2)}/${record.id}`))
  const there = readdirSync(where).filter((name) => !/-(wal|shm)$/.test(name))
  expect(listed.map((name) => name.replace(/\/.*/, '')).sort()).toEqual(there.sort())
  expect(readFileSync(join(where, listed.find((name) => name.startsWith('raw/')) ?? ''))).toEqual(
    Buffer.from(rawBytes(1)),
  )
})
