import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { sql } from 'kysely'
import { describe, expect, onTestFinished, test } from 'vitest'
import { inventedRows, laterMigrations } from '../../scripts/testMigrations.ts'
import { newLab, openLab, restoreLab } from '../../src/store/index.ts'
import { openEngine } from '../../src/store/opening.ts'
import type { Migration } from '../../src/store/schema/migration.ts'
import { migrations } from '../../src/store/schema/migrations.ts'
import {
  change,
  engines,
  folderEngine,
  freshLab,
  kinds,
  openedLab,
  opening,
  rawBytes,
  temporaryFolder,
  value,
  workshop,
} from './engines.ts'

const later = (where: string) => ({
  migrations: laterMigrations,
  program: 'kufe 9.0.0',
  ...(where.startsWith('postgres') ? { backupTo: join(temporaryFolder(), 'before') } : {}),
})

async function labWithRecord(where: string) {
  const lab = await freshLab(where)
  value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const [records, history] = [value(await lab.records.list()), value(await lab.history.list())]
  await lab.close()
  return { records, history }
}

/** Notes of the steps that a lab has gone through. */
async function steps(where: string): Promise<unknown[]> {
  const engine = openEngine(where)
  onTestFinished(() => engine.close())
  return engine.read.selectFrom('migrations').select(['version', 'name', 'program', 'who']).orderBy('version').execute()
}

test('steps count from 1 without a gap', () => {
  expect(migrations.map(({ version }) => version)).toEqual(migrations.map((_, i) => i + 1))
})

describe.each(engines)('a lab of an older program on $name', ({ name, place }) => {
  test('is brought up when it is opened, once, and everything is still there', async () => {
    const where = await place()
    const { records, history } = await labWithRecord(where)
    const options = later(where)
    for (let time = 0; time < 2; time++) {
      const lab = await openedLab(where, options)
      expect(value(await lab.records.list())).toEqual(records)
      expect(value(await lab.history.list())).toEqual(history)
      expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
      await lab.close()
    }
    expect(await steps(where)).toEqual([
      { version: 1, name: 'begin', program: 'kufe 0.1.0', who: 'Ada' },
      { version: 2, name: 'papers', program: 'kufe 0.1.0', who: 'Ada' },
      { version: 3, name: 'invented for tests', program: 'kufe 9.0.0', who: 'Ada' },
    ])
  })

  test('brought up is left alone by the older program', async () => {
    const where = await place()
    await labWithRecord(where)
    await (await openedLab(where, later(where))).close()
    const opened = await openLab(where, opening)
    expect(kinds(opened)).toEqual(['labNewer'])
    expect(opened.ok ? '' : opened.problems[0].what).toContain('version 3, this program knows 2')
    expect(kinds(await restoreLab(where, join(temporaryFolder(), 'copy')))).toEqual(['labNewer'])
  })

  test('stays as it is when a step fails', async () => {
    const where = await place()
    const { records } = await labWithRecord(where)
    const broken: Migration = {
      version: 4,
      name: 'broken',
      statements: () => ['create table third (n integer)', 'select nonsense'],
    }
    const options = { ...later(where), migrations: [...laterMigrations, broken] }
    await expect(openLab(where, { ...opening, ...options })).rejects.toThrow('nonsense')
    expect(await steps(where)).toHaveLength(migrations.length)
    expect(value(await (await openedLab(where)).records.list())).toEqual(records)
  })

  test('is brought up by one of two that open it at once', async () => {
    const where = await place()
    await labWithRecord(where)
    const options = later(where)
    const labs = await Promise.all([openedLab(where, options), openedLab(where, options)])
    const engine = openEngine(where)
    onTestFinished(() => engine.close())
    const { rows } = await sql<{ n: number }>`select count(*) as n from invented`.execute(engine.read)
    expect(rows).toEqual([{ n: inventedRows }])
    expect(labs).toHaveLength(2)
  })

  test('is copied before', async () => {
    const where = await place()
    const { records } = await labWithRecord(where)
    const options = later(where)
    await (await openedLab(where, options)).close()
    if (name === 'sqlite') {
      expect(readdirSync(join(where, 'backups'))).toEqual(['before-version-3.sqlite'])
      const copy = new DatabaseSync(join(where, 'backups', 'before-version-3.sqlite'), { readOnly: true })
      onTestFinished(() => copy.close())
      expect(copy.prepare('pragma integrity_check').all()).toEqual([{ integrity_check: 'ok' }])
      expect(copy.prepare('select max(version) as version from migrations').get()).toEqual({ version: 2 })
      expect(copy.prepare('select raw from record_versions').all()).toEqual(records.map(({ id }) => ({ raw: id })))
    } else {
      const copy = await openedLab(options.backupTo ?? '')
      expect(value(await copy.records.list())).toEqual(records)
      expect(value(await copy.check())).toMatchObject({ raws: 1, problems: [] })
    }
  })

  test('is restored with its own schema from a backup, then brought up', async () => {
    const where = await place()
    const { records } = await labWithRecord(where)
    const copy = join(temporaryFolder(), 'copy')
    value(await restoreLab(where, copy, { migrations: laterMigrations }))
    expect(await steps(copy)).toHaveLength(migrations.length)
    expect(value(await (await openedLab(copy, later(copy))).records.list())).toEqual(records)
  })
})

test.for(engines)('a lab from before there were papers is copied and brought up on $name', async ({ name, place }) => {
  const where = await place()
  const lab = value(await newLab(where, workshop, { ...opening, migrations: migrations.slice(0, 1) }))
  value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const records = value(await lab.records.list())
  await lab.close()
  const copy = join(temporaryFolder(), 'copy')
  value(await restoreLab(where, copy))
  const backup = name === 'postgres' ? { backupTo: join(temporaryFolder(), 'before') } : {}
  for (const there of [copy, where]) {
    const opened = await openedLab(there, backup)
    expect(value(await opened.records.list())).toEqual(records)
    const own = { subject: 'lab', subjectId: 'lab', kind: 'liquid', name: 'oat-drink' } as const
    expect(value(await opened.keepPaper({ ...own, content: {}, after: 0 }, change(2)))).toMatchObject({
      end: 'kept',
    })
    await opened.close()
  }
})

test.for(engines.filter(({ name }) => name === 'postgres'))(
  'a database is not brought up without a place for the copy',
  async ({ place }) => {
    const where = await place()
    await labWithRecord(where)
    expect(kinds(await openLab(where, { ...opening, migrations: laterMigrations }))).toEqual(['labOlder'])
    expect(await steps(where)).toHaveLength(migrations.length)
  },
)

test('the copy that is put in place of the database is the lab as it was', async () => {
  const where = await folderEngine.place()
  const { records } = await labWithRecord(where)
  await (await openedLab(where, later(where))).close()
  const { writeFileSync } = await import('node:fs')
  writeFileSync(join(where, 'kufe.sqlite'), readFileSync(join(where, 'backups', 'before-version-3.sqlite')))
  const lab = await openedLab(where)
  expect(value(await lab.records.list())).toEqual(records)
  expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
})
