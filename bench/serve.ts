// How quick the bench's server answers while a long record is reduced, and how quick long records pan: node bench/serve.ts [ROWS]

import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { makeLab } from '../src/bench/lab/index.ts'
import { longRecord } from '../test/server/longRecord.ts'

const rows = Number(process.argv[2] ?? 1_000_000)
const folder = mkdtempSync(join(tmpdir(), 'kufe-serve-bench-'))
const place = join(folder, 'lab')
const outside = { now: () => new Date(), progress: () => {}, stop: { aborted: false }, program: 'kufe bench' }
await makeLab({ place, who: 'MK', why: '' }, 'Speed', outside)
const child = spawn(process.execPath, ['scripts/serverChild.ts', place], { stdio: ['ignore', 'pipe', 'inherit'] })
const address: string = await new Promise((resolve) =>
  child.stdout.setEncoding('utf8').once('data', (text: string) => resolve(text.trim().replace(/\/$/, ''))),
)

const say = (what: string, times: readonly number[]): void => {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share: number): string =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1)
  process.stdout.write(
    `${what.padEnd(44)}${String(times.length).padStart(6)}${[0.5, 0.95, 1].map((share) => at(share).padStart(10)).join('')}\n`,
  )
}
const timed = async (path: string): Promise<number> => {
  const begun = performance.now()
  await (await fetch(address + path)).arrayBuffer()
  return performance.now() - begun
}
// biome-ignore lint/suspicious/noExplicitAny: answers of every shape
const asked = async (path: string): Promise<any> => (await fetch(address + path)).json()
// biome-ignore lint/suspicious/noExplicitAny: as above
const sent = async (path: string, body: Uint8Array | object): Promise<any> => {
  const raw = body instanceof Uint8Array
  const headers = { 'content-type': raw ? 'application/octet-stream' : 'application/json' }
  const content = raw ? new Uint8Array(body) : JSON.stringify(body)
  return (await fetch(address + path, { method: 'POST', headers, body: content })).json()
}

try {
  process.stdout.write(`${'ms'.padEnd(44)}${'count'.padStart(6)}    median      95 %   longest\n`)
  const bytes = longRecord(rows)
  const begun = performance.now()
  const { upload } = await sent('/api/uploads?name=long.csv', bytes)
  say(`upload of ${(bytes.length / 2 ** 20).toFixed(0)} MiB`, [performance.now() - begun])
  say('first look at its columns', [await timed(`/api/uploads/${upload}`)])
  const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
  const { job } = await sent(`/api/uploads/${upload}/keep`, { setup, study: 'Long', by: 'MK', why: '' })
  const times: number[] = []
  const reducing = performance.now()
  let state = { state: 'running', done: { record: '' } }
  while (state.state === 'running') {
    for (const path of ['/api/lab', '/api/studies', '/api']) times.push(await timed(path))
    state = await asked(`/api/jobs/${job}`)
  }
  say(`kept and reduced, ${rows} rows`, [performance.now() - reducing])
  say('answers meanwhile', times)
  const trace = `/api/records/${state.done.record}/trace?pixels=1000`
  say('first trace: columns read', [await timed(trace)])
  const { record } = await asked(trace)
  const span = record[1] - record[0]
  const pans: number[] = []
  for (let k = 0; k < 300; k++) {
    const width = span * 0.9 ** (k % 60)
    const from = record[0] + ((span - width) * (k % 17)) / 17
    pans.push(await timed(`${trace}&from=${from}&to=${from + width}`))
  }
  say('pan and zoom, 1000 pixels, all channels', pans)
  const one: number[] = []
  for (let k = 0; k < 300; k++) one.push(await timed(`${trace}&channels=torque&from=${record[0] + (span * k) / 400}`))
  say('the same, one channel', one)
} finally {
  child.kill('SIGTERM')
  await new Promise((resolve) => child.once('close', resolve))
  rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
}
