import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { request } from 'node:http'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { ended, kept, type StartedServer, startedServer } from './startedServer.ts'

const largest = 1 << 20
let server: StartedServer
beforeAll(async () => {
  server = await startedServer({ largestUpload: largest })
})
afterAll(() => server[Symbol.asyncDispose]())

const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
const bytes = readFileSync('examples/lacquer/wax.csv')
const lines = bytes.toString('utf8').trim().split(/\r?\n/)
const waiting = (): readonly string[] => {
  const folder = join(server.place, 'uploads')
  return existsSync(folder) ? readdirSync(folder) : []
}
const handIn = (name: string, body: Uint8Array) => server.ask(`/api/uploads?name=${name}`, { method: 'POST', body })

test('columns are guessed with reasons and the first rows shown; nothing is kept by looking', async () => {
  const { json } = await handIn('wax.csv', bytes)
  expect(json).toMatchObject({ name: 'wax.csv', size: bytes.length })
  const look = await server.ask(`/api/uploads/${json.upload}`)
  // Two lines of words, the headings, their units, then the rows.
  const [, , head, , first] = lines
  expect(look.json.head.headings).toEqual(head.split(','))
  expect(look.json.head.rows).toHaveLength(30)
  expect(look.json.head.rows[0]).toEqual(first.split(','))
  expect(look.json.head.firstLine).toBe(5)
  const torque = look.json.columns.find(({ channel }: { channel: string }) => channel === 'torque')
  expect(torque).toMatchObject({ source: 'guess' })
  expect(torque.reason).not.toBe('')
  expect(look.json).toMatchObject({
    problems: [],
    known: null,
    rows: lines.length - 4,
  })
  expect((await server.ask('/api/lab')).json.counts.records).toBe(0)
  await server.ask(`/api/uploads/${json.upload}`, { method: 'DELETE' })
})

test('a column that is read wrongly is mended, and the record remembers what was said', async () => {
  const foreign = Buffer.from(bytes.toString('utf8').replace('Torque', 'Wert').replace('N·m', ''))
  const { json } = await handIn('foreign.csv', foreign)
  const path = `/api/uploads/${json.upload}`
  const before = (await server.ask(path)).json
  expect(before.rows).toBeNull()
  expect(before.problems.map(({ kind }: { kind: string }) => kind)).toContain('columnMissing')
  expect(before.head.rows).toHaveLength(30)
  const channels = { columns: { Wert: { channel: 'torque', unit: 'mN·m' } } }
  const after = (await server.ask(`${path}/look`, { method: 'POST', body: { channels } })).json
  expect(after.problems).toEqual([])
  const refused = await server.ask(`${path}/keep`, { method: 'POST', body: { setup, by: 'MK', why: '' } })
  expect((await ended(server, refused.json.job)).state).toBe('failed')
  expect(waiting()).toHaveLength(2) // it waits for better words
  const job = await server.ask(`${path}/keep`, { method: 'POST', body: { setup, channels, by: 'MK', why: '' } })
  const end = await ended(server, job.json.job)
  expect(end.state).toBe('done')
  const { json: record } = await server.ask(`/api/records/${end.done.record}`)
  expect(record.result.origin.options.given.reading.columns).toEqual(channels.columns)
  expect(waiting()).toEqual([])
})

test('the same bytes are the same record', async () => {
  const words = { name: 'once.csv', bytes, setup, sample: 'wax', replicate: 2, study: 'Wax' }
  const first = await kept(server, words)
  const again = await handIn('again.csv', bytes)
  expect((await server.ask(`/api/uploads/${again.json.upload}`)).json.known).toBe(first)
  const body = { setup, by: 'MK', why: '' }
  const job = await server.ask(`/api/uploads/${again.json.upload}/keep`, { method: 'POST', body })
  expect((await ended(server, job.json.job)).done).toEqual({ record: first, known: true })
  const { json } = await server.ask('/api/studies/wax')
  expect(json.records).toMatchObject([{ id: first, name: 'once.csv', sample: 'wax', replicate: 2, state: 'reduced' }])
  expect(json.records[0].points.length).toBeGreaterThan(10)
  expect(json.records[0].line.length).toBeGreaterThan(10)
})

test('asked twice to keep the same file, it is done once', async () => {
  const { json } = await handIn('twice.csv', Buffer.concat([bytes, Buffer.from('\n\n')]))
  const path = `/api/uploads/${json.upload}/keep`
  const body = { setup, by: 'MK', why: '' }
  const asked = await Promise.all([1, 2].map(() => server.ask(path, { method: 'POST', body })))
  expect(asked[0].json.job).toBe(asked[1].json.job)
  expect((await ended(server, asked[0].json.job)).done).toMatchObject({ known: false })
})

test('a wrong setup comes back with its lines, and nothing is kept', async () => {
  const { json } = await handIn('other.csv', Buffer.concat([bytes, Buffer.from('\n')]))
  const before = (await server.ask('/api/lab')).json.counts
  const body = { setup: setup.replace('balls: 3', 'balls: three'), by: 'MK', why: '' }
  const job = await server.ask(`/api/uploads/${json.upload}/keep`, { method: 'POST', body })
  const end = await ended(server, job.json.job)
  expect(end).toMatchObject({ state: 'failed', problem: { status: 422 } })
  const line = setup.split('\n').findIndex((text) => text.includes('balls: 3')) + 1
  expect(end.problem.problems[0].place).toMatchObject({ file: 'setup', line })
  expect((await server.ask('/api/lab')).json.counts).toEqual(before)
  await server.ask(`/api/uploads/${json.upload}`, { method: 'DELETE' })
})

test('what is too large is refused, whether or not it says so beforehand', async () => {
  const much = Buffer.alloc(largest + 1, 'x')
  const said = await handIn('much.csv', much)
  expect(said.status).toBe(413)
  expect(said.json.problems[0].kind).toBe('bodyTooLarge')
  expect(await streamed(much)).toBe(413)
  expect(waiting()).toEqual([])
})

/** Sends without saying how long it is. */
const streamed = (body: Buffer): Promise<number> =>
  new Promise((resolve, reject) => {
    const headers = { 'content-type': 'application/octet-stream', 'transfer-encoding': 'chunked' }
    const sent = request(
      {
        host: '127.0.0.1',
        port: server.port,
        path: '/api/uploads?name=much.csv',
        method: 'POST',
        headers,
        agent: false,
      },
      (response) => {
        resolve(response.statusCode ?? 0)
        response.resume()
      },
    )
    sent.on('error', reject)
    for (let at = 0; at < body.length; at += 65_536) sent.write(body.subarray(at, at + 65_536))
    sent.end()
  })

test('a file that stops in the middle leaves nothing', async () => {
  await new Promise<void>((resolve) => {
    const sent = request({
      ...{ host: '127.0.0.1', port: server.port, path: '/api/uploads?name=half.csv', method: 'POST', agent: false },
      headers: { 'content-type': 'application/octet-stream', 'content-length': String(bytes.length) },
    })
    sent.on('error', () => resolve())
    sent.write(bytes.subarray(0, 4000))
    setTimeout(() => sent.destroy(), 200)
  })
  for (let tries = 0; tries < 100 && waiting().length > 0; tries++) await new Promise((go) => setTimeout(go, 20))
  expect(waiting()).toEqual([])
})

test('uploads wait over a restart; what has no note is cleared away', async () => {
  const { json } = await handIn('waits.csv', bytes)
  await server.again()
  expect((await server.ask(`/api/uploads/${json.upload}`)).json.name).toBe('waits.csv')
  await server.ask(`/api/uploads/${json.upload}`, { method: 'DELETE' })
  expect((await server.ask(`/api/uploads/${json.upload}`)).status).toBe(404)
  expect(server.faults).toEqual([])
})
