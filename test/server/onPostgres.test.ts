import { readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type NoServer, startPostgres, type TestServer } from '../../scripts/postgresForTests.ts'
import { ended, kept, startedServer } from './startedServer.ts'

let postgres: TestServer | NoServer
beforeAll(async () => {
  postgres = await startPostgres({ durable: false })
}, 60_000)
afterAll(() => ('why' in postgres ? undefined : postgres.stop()))

test('the same on a PostgreSQL database: keep, move, verify, papers, trace', async ({ skip }) => {
  if ('why' in postgres) {
    expect(process.env.KUFE_TEST_POSTGRES).not.toBe('required')
    return skip(postgres.why)
  }
  const folders = (): readonly string[] => readdirSync(tmpdir()).filter((name) => name.startsWith('kufe-uploads-'))
  const before = folders()
  await using server = await startedServer({ database: await postgres.newDatabase() })
  const bytes = readFileSync('examples/lacquer/wax.csv')
  const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
  const record = await kept(server, { name: 'wax.csv', bytes, setup, study: 'Wax', sample: 'wax' })
  expect((await server.ask('/api/lab')).json).toMatchObject({ engine: 'postgres', counts: { records: 1, reduced: 1 } })
  const body = { windows: [{ step: 4, from: 40, to: 46 }], by: 'AB', why: 'a bump' }
  const path = `/api/records/${record}/mends`
  const moved = await server.ask(path, { method: 'PUT', headers: { 'if-match': '"0"' }, body })
  expect((await ended(server, moved.json.job)).state).toBe('done')
  const late = await server.ask(path, { method: 'PUT', headers: { 'if-match': '"0"' }, body })
  expect(late.status).toBe(412)
  const verify = await server.ask(`/api/records/${record}/verify`, { method: 'POST' })
  expect((await ended(server, verify.json.job)).done.verified).toEqual({ same: 2, findings: [] })
  expect((await server.ask(`/api/records/${record}/trace?pixels=10`)).json.columns.torque.min).toHaveLength(10)
  expect(server.faults).toEqual([])
  await server.again()
  expect(folders().filter((name) => !before.includes(name))).toEqual([])
}, 60_000)
