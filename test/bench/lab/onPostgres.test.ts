import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startPostgres, type TestServer } from '../../../scripts/postgresForTests.ts'
import {
  amendRecord,
  backupLab,
  listLab,
  makeLab,
  restoreBackup,
  showThing,
  verifyLab,
} from '../../../src/bench/lab/index.ts'
import { exportLab, importPackage } from '../../../src/bench/lab/package/index.ts'
import { writeReports } from '../../../src/bench/lab/report/index.ts'
import { add, demoFolder, outside, temporaryFolder, value } from './labs.ts'

// The use cases on a database; what the two kinds of lab do alike is tested in test/store.

let server: TestServer | undefined
let why = ''
beforeAll(async () => {
  if (process.env.KUFE_TEST_ENGINE === 'sqlite') {
    why = 'narrowed to sqlite by KUFE_TEST_ENGINE'
    return
  }
  const started = await startPostgres({ durable: false })
  if ('why' in started) why = started.why
  else server = started
}, 60_000)
afterAll(() => server?.stop())

test('a lab in a database goes the whole way: add, amend, verify, report, out as a package, in again, to a folder and back', async ({
  skip,
}) => {
  if (server === undefined) return skip(why)
  const call = { place: await server.newDatabase(), who: 'MK', why: 'a test' }
  const folder = temporaryFolder()
  expect(value(await makeLab(call, 'Lacquer workshop (invented)', outside)).id).toBe('lacquer-workshop-invented')
  expect((await add(call, [demoFolder('lacquer-a-1', 'wax')], { names: { study: 'Drawer runners' } })).told).toEqual([
    'kept lacquer-a-1.csv',
    'kept wax.csv',
    'reduced lacquer-a-1.csv',
    'reduced wax.csv',
  ])
  value(await amendRecord({ word: 'wax.csv', names: {}, facts: { replicate: 2 } }, call, outside))
  expect(value(await showThing('wax.csv', call, outside))).toMatchObject({ kind: 'record', record: { version: 2 } })
  const verify = { word: undefined, keep: false, threads: 0 }
  expect(value(await verifyLab(verify, call, outside))).toMatchObject({ same: 2, findings: [] })
  value(await writeReports({ word: 'drawer-runners', html: join(folder, 'reports') }, call, outside))
  expect(readdirSync(join(folder, 'reports'))).toHaveLength(2)

  const here = value(await listLab({}, call, outside)).records
  const out = join(folder, 'package')
  value(await exportLab({ word: undefined, out, creators: [], reports: false }, call, outside))
  const there = { ...call, place: await server.newDatabase() }
  expect(value(await importPackage(out, there, outside))).toMatchObject({ isNew: true, records: 2, problems: [] })
  expect(value(await listLab({}, there, outside)).records).toEqual(here)

  const copy = join(folder, 'copy')
  value(await backupLab(copy, call, outside))
  const back = { ...call, place: await server.newDatabase() }
  value(await restoreBackup(copy, back.place, outside))
  expect(value(await listLab({}, back, outside)).records).toEqual(here)
  expect(value(await verifyLab(verify, back, outside))).toMatchObject({ same: 2, findings: [] })
})
