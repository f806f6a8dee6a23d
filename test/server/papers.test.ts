import { afterAll, beforeAll, expect, test } from 'vitest'
import { type StartedServer, startedServer } from './startedServer.ts'

let server: StartedServer
beforeAll(async () => {
  server = await startedServer()
  await server.ask('/api/studies', { method: 'POST', body: { name: 'Drawer runners', by: 'MK' } })
})
afterAll(() => server[Symbol.asyncDispose]())

const question = '/api/studies/drawer-runners/papers/question'
const put = (path: string, tag: string | undefined, content: unknown) =>
  server.ask(path, {
    method: 'PUT',
    headers: tag === undefined ? {} : { 'if-match': tag },
    body: { content, by: 'MK', why: '' },
  })

test('a paper that nobody kept is version 0 with nothing in it, and the first one comes after it', async () => {
  const none = await server.ask(question)
  expect(none).toMatchObject({ status: 200, headers: { etag: '"0"' }, json: { version: 0, content: null } })
  expect((await server.ask('/api/studies/no-such-study/papers/question')).status).toBe(404)
  const first = await put(question, '"0"', { title: 'Which slides easier?' })
  expect(first.status).toBe(200)
  expect(first.headers.etag).toBe('"1"')
  expect(first.json).toMatchObject({ version: 1, by: 'MK', content: { title: 'Which slides easier?' } })
})

test('a new version needs the one that its writer saw', async () => {
  expect((await put(question, undefined, {})).status).toBe(428)
  expect((await put(question, 'any', {})).status).toBe(400)
  const second = await put(question, '"1"', { title: 'Which lacquer slides easier?' })
  expect(second.json.version).toBe(2)
  const late = await put(question, '"1"', { title: 'mine' })
  expect(late.status).toBe(412)
  expect(late.headers['content-type']).toBe('application/problem+json')
  expect(late.json.current).toMatchObject({ version: 2, content: { title: 'Which lacquer slides easier?' } })
  expect(late.json.problems[0].kind).toBe('superseded')
  expect((await server.ask(question)).json.content.title).toBe('Which lacquer slides easier?')
})

test('two that write at once: one is kept, the other hears of it', async () => {
  const answers = await Promise.all(['A', 'B', 'C'].map((title) => put(question, '"2"', { title })))
  expect(answers.map(({ status }) => status).sort()).toEqual([200, 412, 412])
  const winner = answers.find(({ status }) => status === 200)
  expect((await server.ask(question)).json.content).toEqual(winner?.json.content)
})

test('who has the latest version already is told so without it', async () => {
  const { headers } = await server.ask(question)
  const again = await server.ask(question, { headers: { 'if-none-match': String(headers.etag) } })
  expect(again.status).toBe(304)
  expect(again.text).toBe('')
})

test("papers of the lab have a name each, and stand in the lab's answer", async () => {
  const kept = await put('/api/lab/papers/material/birch-plywood', '"0"', { name: 'birch plywood' })
  expect(kept.json).toMatchObject({ subject: 'lab', kind: 'material', name: 'birch-plywood', version: 1 })
  const { json } = await server.ask('/api/lab')
  expect(json.papers).toMatchObject([{ kind: 'material', name: 'birch-plywood' }])
})

test('kinds and subjects that do not go together are refused with the field', async () => {
  expect((await put('/api/studies/drawer-runners/papers/mends', '"0"', {})).status).toBe(400)
  expect((await put('/api/lab/papers/question/x', '"0"', {})).status).toBe(400)
  expect((await put('/api/studies/no-such-study/papers/question', '"0"', {})).status).toBe(404)
  const wrong = await server.ask(question, { method: 'PUT', headers: { 'if-match': '"3"' }, body: { by: '', more: 1 } })
  expect(wrong.status).toBe(422)
  const fields = wrong.json.problems.map(({ place }: { place: { name: string } }) => place.name)
  expect(fields).toEqual(expect.arrayContaining(['content', 'by', 'why']))
})

test('the history says who kept what', async () => {
  const { json } = await server.ask('/api/lab/history?newest=true&limit=1')
  expect(json.entries[0]).toMatchObject({ kind: 'paper', id: 'lab/material/birch-plywood', change: { who: 'MK' } })
  expect(json.last).toBe(json.entries[0].change.number)
})
