import { readFileSync } from 'node:fs'
import { get } from 'node:http'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { longRecord } from './longRecord.ts'
import { ended, kept, type StartedServer, startedServer } from './startedServer.ts'

const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
let server: StartedServer
beforeAll(async () => {
  server = await startedServer()
})
afterAll(() => server[Symbol.asyncDispose]())

/** Events of a stream, until it ends or `enough` says so. */
function events(path: string, enough: (event: string) => boolean = () => false) {
  const heard: { event: string; data: unknown; id?: string }[] = []
  return new Promise<typeof heard>((resolve, reject) => {
    const asked = get({ host: '127.0.0.1', port: server.port, path, agent: false }, (response) => {
      expect(response.headers['content-type']).toBe('text/event-stream')
      let text = ''
      response.setEncoding('utf8').on('data', (piece: string) => {
        text += piece
        for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
          const lines = text.slice(0, end).split('\n')
          text = text.slice(end + 2)
          const field = (name: string) => lines.find((line) => line.startsWith(`${name}: `))?.slice(name.length + 2)
          const event = field('event')
          if (event === undefined) continue
          heard.push({ event, data: JSON.parse(field('data') ?? 'null'), id: field('id') })
          if (enough(event)) asked.destroy()
        }
      })
      response.on('close', () => resolve(heard))
    })
    asked.on('error', (error) => (heard.length > 0 ? resolve(heard) : reject(error)))
  })
}

const begun = async (bytes: Buffer): Promise<{ upload: string; job: string }> => {
  const { json } = await server.ask('/api/uploads?name=long.csv', { method: 'POST', body: bytes })
  const body = { setup, by: 'MK', why: '' }
  const job = await server.ask(`/api/uploads/${json.upload}/keep`, { method: 'POST', body })
  return { upload: json.upload, job: job.json.job }
}

test('a job tells how far it is and what became of it, and says so again to whoever asks later', async () => {
  const { job } = await begun(longRecord(60_000))
  const heard = await events(`/api/jobs/${job}/events`)
  expect(heard.slice(0, -1).every(({ event }) => event === 'progress')).toBe(true)
  expect(heard.some(({ data }) => (data as { doing: string }).doing === 'reading')).toBe(true)
  expect(heard.at(-1)).toMatchObject({ event: 'done', data: { known: false } })
  expect(await events(`/api/jobs/${job}/events`)).toEqual(heard.slice(-1))
})

test('a job that is stopped ends soon and keeps nothing; the file waits, and can be kept after all', async () => {
  const before = (await server.ask('/api/lab')).json.counts
  const { job, upload } = await begun(longRecord(400_000))
  while ((await server.ask(`/api/jobs/${job}`)).json.progress.doing !== 'reading')
    await new Promise((go) => setTimeout(go, 5))
  const at = performance.now()
  expect((await server.ask(`/api/jobs/${job}`, { method: 'DELETE' })).status).toBe(204)
  expect((await ended(server, job)).state).toBe('stopped')
  expect(performance.now() - at).toBeLessThan(1000)
  await new Promise((go) => setTimeout(go, 600)) // a thread that went on would be found out now
  expect((await server.ask('/api/lab')).json.counts).toEqual(before)
  expect((await server.ask(`/api/uploads/${upload}`)).json.name).toBe('long.csv')
  const again = await server.ask(`/api/uploads/${upload}/keep`, { method: 'POST', body: { setup, by: 'MK', why: '' } })
  expect((await ended(server, again.json.job)).state).toBe('done')
}, 60_000)

test('a job that waits for its turn is stopped before it begins', async () => {
  const first = await begun(longRecord(100_000, 10))
  const second = await begun(longRecord(100_000, 5))
  await server.ask(`/api/jobs/${second.job}`, { method: 'DELETE' })
  expect((await ended(server, second.job)).state).toBe('stopped')
  expect((await ended(server, first.job)).state).toBe('done')
  await server.ask(`/api/uploads/${second.upload}`, { method: 'DELETE' })
}, 60_000)

test('what is kept is told to whoever listens, with study and record', async () => {
  const listening = events('/api/events', () => true)
  await new Promise((go) => setTimeout(go, 100))
  await server.ask('/api/studies', { method: 'POST', body: { name: 'Heard', by: 'AB' } })
  const [first] = await listening
  expect(first).toMatchObject({ event: 'changed', data: { kind: 'study', study: 'heard', record: null, by: 'AB' } })
  expect(Number(first.id)).toBeGreaterThan(0)
})

describe('moved windows', () => {
  let record = ''
  beforeAll(async () => {
    const bytes = readFileSync('examples/lacquer/wax.csv')
    record = await kept(server, { name: 'wax.csv', bytes, setup, study: 'Wax', sample: 'wax' })
  })
  const move = (tag: string, windows: unknown, why = '') =>
    server.ask(`/api/records/${record}/mends`, {
      method: 'PUT',
      headers: { 'if-match': tag },
      body: { windows, by: 'AB', why },
    })
  const point = async (step: number) => {
    const { json } = await server.ask(`/api/records/${record}`)
    return json.result.points.find((one: { step: number }) => one.step === step)
  }
  const verified = async () => {
    const { json } = await server.ask(`/api/records/${record}/verify`, { method: 'POST' })
    return (await ended(server, json.job)).done.verified
  }

  test('the record is reduced again with the window, the remark says from what to what, the history who and why', async () => {
    const before = await point(4)
    const answer = await move('"0"', [{ step: 4, from: 40, to: 46 }], 'a bump at 39 s')
    expect(answer.status).toBe(202)
    expect((await ended(server, answer.json.job)).state).toBe('done')
    const after = await point(4)
    expect(after.friction).not.toBe(before.friction)
    const moved = after.remarks.find(({ kind }: { kind: string }) => kind === 'windowMoved')
    expect(moved).toMatchObject({ seen: 40, unit: 's', step: 4 })
    expect(moved.sentence).toMatch(/40 s to 46 s counts, where the program took/)
    const { json } = await server.ask(`/api/records/${record}`)
    expect(json.papers).toMatchObject([{ kind: 'mends', version: 1, by: 'AB', why: 'a bump at 39 s' }])
    expect(json.results).toHaveLength(2)
    expect(json.record.points.find(({ step }: { step: number }) => step === 4).moved).toBe(true)
    expect(await verified()).toEqual({ same: 2, findings: [] })
  })

  test('who did not see the last move hears of it, and nothing changes', async () => {
    const late = await move('"0"', [])
    expect(late.status).toBe(412)
    expect(late.json.current).toMatchObject({ version: 1, content: { windows: [{ step: 4, from: 40, to: 46 }] } })
  })

  test('a window outside its step is told with the step, and nothing is kept', async () => {
    const job = await move('"1"', [
      { step: 4, from: 1000, to: 1001 },
      { step: 99, from: 0, to: 1 },
    ])
    const end = await ended(server, job.json.job)
    expect(end.state).toBe('failed')
    expect(end.problem.problems.map(({ kind }: { kind: string }) => kind)).toEqual([
      'windowTooShort',
      'windowWithoutStep',
    ])
    expect((await server.ask(`/api/records/${record}/papers/mends`)).json.version).toBe(1)
  })

  test('moved back, the earlier result counts again, bit for bit', async () => {
    const { json: before } = await server.ask(`/api/records/${record}`)
    const job = await move('"1"', [])
    expect((await ended(server, job.json.job)).state).toBe('done')
    const { json: after } = await server.ask(`/api/records/${record}`)
    expect(after.record.result).toBe(before.results[0].id)
    expect(after.results).toHaveLength(2)
    expect(await verified()).toEqual({ same: 2, findings: [] })
  })

  test('another setup is another result; a correction needs a reason', async () => {
    const path = `/api/records/${record}/amend`
    const bare = await server.ask(path, { method: 'POST', body: { setup, by: 'AB', why: '' } })
    expect(bare.status).toBe(422)
    const other = setup.replace('balls: 3', 'balls: 4')
    const { json } = await server.ask(path, {
      method: 'POST',
      body: { setup: other, sample: 'wax 2', by: 'AB', why: 'four balls' },
    })
    expect((await ended(server, json.job)).state).toBe('done')
    const shown = (await server.ask(`/api/records/${record}`)).json
    expect(shown.record).toMatchObject({ version: 2, sample: 'wax-2', state: 'reduced' })
    expect(shown.setup.read.fixture.balls).toBe(4)
    expect(server.faults).toEqual([])
  })
})
