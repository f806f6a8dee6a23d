import { afterAll, beforeAll, expect, test } from 'vitest'
import { compareSamples } from '../../src/core/decide/index.ts'
import { add } from '../bench/lab/labs.ts'
import { type StartedServer, startedServer } from './startedServer.ts'

let server: StartedServer
const study = '/api/studies/drawer-runners'
const folder = 'test/data/records'

beforeAll(async () => {
  server = await startedServer()
  for (const letter of ['a', 'b']) {
    const files = [1, 2, 3].map((n) => `${folder}/varnish-${letter}-${n}.csv`)
    const names = { study: 'Drawer runners', sample: `varnish ${letter.toUpperCase()}` }
    await add({ place: server.place, who: 'MK', why: '' }, files, { setup: `${folder}/varnish.setup.yaml`, names })
  }
  await server.ask('/api/studies', { method: 'POST', body: { name: 'Empty', by: 'MK' } })
}, 60_000)
afterAll(() => server[Symbol.asyncDispose]())

test('the replicates of a study come ready to be compared, as the browser does', async () => {
  const { status, json } = await server.ask(`${study}/replicates`)
  expect(status).toBe(200)
  expect(json.replicates).toHaveLength(6)
  expect(json.records[0]).toMatchObject({ name: 'varnish-a-1.csv', sample: 'varnish A' })
  const compared = compareSamples(json.replicates, { options: { draws: 400 } })
  expect(compared.ok && compared.value.sentences[0]).toMatch(/^varnish B slips more easily than varnish A/)
})

test('the decision is reported with what its paper says, as HTML and as PDF', async () => {
  const { json } = await server.ask(`${study}/replicates`)
  const removals = [{ record: json.replicates[0].record, by: 'AB', why: 'the plate was not clean' }]
  const kept = await server.ask(`${study}/papers/decision`, {
    method: 'PUT',
    headers: { 'if-match': '"0"' },
    body: { content: { margin: 0.2, removals }, by: 'AB', why: 'decided' },
  })
  expect(kept.status).toBe(200)
  const html = await server.ask(`${study}/decision.html`)
  expect(html.headers['content-type']).toBe('text/html; charset=utf-8')
  expect(html.text).toContain('Taken out by AB: the plate was not clean')
  expect(html.text).toMatch(/within 20\s%\sof\sfriction/)
  const pdf = await server.ask(`${study}/decision.pdf`)
  expect(pdf.headers['content-type']).toBe('application/pdf')
  expect(pdf.text.slice(0, 5)).toBe('%PDF-')
}, 60_000)

test('a study that holds nothing, and one that is not there, say so', async () => {
  const empty = await server.ask('/api/studies/empty/replicates')
  expect(empty.status).toBe(200)
  expect(empty.json.replicates).toEqual([])
  expect((await server.ask('/api/studies/nowhere/replicates')).status).toBe(404)
  expect((await server.ask('/api/studies/empty/decision.html')).json.problems[0].kind).toBe('nothingToCompare')
})
