import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { makeLab } from '../../src/bench/lab/index.ts'
import { longRecord } from './longRecord.ts'
import { outside } from './startedServer.ts'

const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
const folder = mkdtempSync(join(tmpdir(), 'kufe-killed-'))
const place = join(folder, 'lab')
let server: ChildProcess
let address = ''

/** A process of its own, so that it can be killed; the page is none. */
async function start(): Promise<void> {
  const child = spawn(process.execPath, ['scripts/serverChild.ts', place], { stdio: ['ignore', 'pipe', 'inherit'] })
  server = child
  address = await new Promise((resolve, reject) => {
    child.once('close', (code) => reject(new Error(`the server ended with ${code}`)))
    child.stdout.setEncoding('utf8').once('data', (text: string) => resolve(text.trim().replace(/\/$/, '')))
  })
}

const kill = (): Promise<void> =>
  new Promise((resolve) => {
    server.once('close', () => resolve())
    server.kill('SIGKILL')
  })

beforeAll(async () => {
  await makeLab({ place, who: 'MK', why: '' }, 'Workshop', outside)
  await start()
}, 60_000)
afterAll(async () => {
  await kill()
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
})

// biome-ignore lint/suspicious/noExplicitAny: answers of every shape
const get = async (path: string): Promise<any> => (await fetch(`${address}${path}`)).json()
// biome-ignore lint/suspicious/noExplicitAny: as above
const post = async (path: string, body: unknown): Promise<any> => {
  const headers = { 'content-type': 'application/json' }
  return (await fetch(`${address}${path}`, { method: 'POST', headers, body: JSON.stringify(body) })).json()
}
// biome-ignore lint/suspicious/noExplicitAny: as above
const handIn = async (name: string, bytes: Uint8Array): Promise<any> =>
  (await fetch(`${address}/api/uploads?name=${name}`, { method: 'POST', body: new Uint8Array(bytes) })).json()
const area = (): readonly string[] => {
  const uploads = join(place, 'uploads')
  return existsSync(uploads) ? readdirSync(uploads) : []
}

test('killed in the middle of an upload: nothing of it is there, and it can be handed in again', async () => {
  const bytes = longRecord(200_000)
  const { port } = new URL(address)
  const sent = request({
    ...{ host: '127.0.0.1', port, path: '/api/uploads?name=half.csv', method: 'POST' },
    headers: { 'content-length': String(bytes.length), host: `localhost:${port}` },
  })
  sent.on('error', () => {})
  sent.write(bytes.subarray(0, bytes.length >> 1))
  while (!area().some((name) => name.endsWith('.part'))) await new Promise((go) => setTimeout(go, 20))
  await kill()
  await start()
  expect(area()).toEqual([])
  expect((await get('/api/lab')).counts).toMatchObject({ records: 0, setups: 0 })
})

test('killed while a record is kept, at any moment: it is gone on with, and kept once and whole', async () => {
  const bytes = longRecord(150_000)
  const made = await handIn('long.csv', bytes)
  await post(`/api/uploads/${made.upload}/keep`, { setup, study: 'Long', sample: 'A', by: 'MK', why: '' })
  for (const pause of [0, 300, 700]) {
    await new Promise((go) => setTimeout(go, pause))
    await kill()
    await start()
    // Either nothing is there yet, or a whole record; never half of one.
    const { counts } = await get('/api/lab')
    expect(counts.records).toBeLessThanOrEqual(1)
  }
  for (;;) {
    const { counts } = await get('/api/lab')
    if (counts.reduced === 1 && area().length === 0) break
    await new Promise((go) => setTimeout(go, 50))
  }
  const { records } = await get('/api/studies/long')
  expect(records).toMatchObject([{ name: 'long.csv', sample: 'a', state: 'reduced' }])
  const { job } = await post(`/api/records/${records[0].id}/verify`, {})
  for (;;) {
    const { state, done } = await get(`/api/jobs/${job}`)
    if (state !== 'running') {
      expect(done.verified).toEqual({ same: 1, findings: [] })
      break
    }
    await new Promise((go) => setTimeout(go, 50))
  }
}, 60_000)

test('asked to end, it ends in order while a record is kept, and goes on with it at the next start', async () => {
  const bytes = longRecord(160_000)
  const made = await handIn('other.csv', bytes)
  await post(`/api/uploads/${made.upload}/keep`, { setup, study: 'Long', sample: 'B', by: 'MK', why: '' })
  const events = await fetch(`${address}/api/events`)
  const ended = new Promise<number | null>((resolve) => server.once('close', resolve))
  const begun = performance.now()
  server.kill('SIGTERM')
  expect(await ended).toBe(0)
  expect(performance.now() - begun).toBeLessThan(5000)
  await events.text().catch(() => '') // it ended, and did not hang
  await start()
  for (;;) {
    const { counts } = await get('/api/lab')
    if (counts.reduced === 2) break
    await new Promise((go) => setTimeout(go, 50))
  }
  expect(area()).toEqual([])
}, 60_000)
