import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { ended, kept, type StartedServer, startedServer } from './startedServer.ts'

let server: StartedServer
beforeAll(async () => {
  server = await startedServer()
})
afterAll(() => server[Symbol.asyncDispose]())

const setup = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
const bytes = readFileSync('examples/lacquer/wax.csv')

/** Names that somebody may try; each is a text like any other, or refused with what would mend it. */
const texts = [
  '../../../../etc/passwd',
  '..\\..\\windows\\system32',
  '/etc/shadow',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "'; drop table records; --",
  'name with %2e%2e%2f in it',
  '=HYPERLINK("http://evil.example")',
  '名前 ∆ ünïcode 🙂',
  '-rf',
  'CON',
]

const refused = [
  { name: 'a\u0000b', why: 'NUL' },
  { name: 'a\u001b[31mred', why: 'escape' },
  { name: 'two\nlines', why: 'line end' },
  { name: 'x'.repeat(10_000), why: '10 kB' },
  { name: '   ', why: 'blanks alone' },
  { name: '\u2028', why: 'a line separator' },
]

describe('studies', () => {
  test.for(texts)('%s is a name', async (name, { skip }) => {
    if (!/[a-z0-9]/i.test(name)) skip('no letter to make an id of')
    const made = await server.ask('/api/studies', { method: 'POST', body: { name, by: 'MK' } })
    expect(made.status).toBe(201)
    expect(made.json.name).toBe(name)
    expect(made.json.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    const again = await server.ask(`/api/studies/${made.json.id}`)
    expect(again.json.name).toBe(name)
  })

  test.for(refused)('$why is refused, with what would mend it', async ({ name }) => {
    const answer = await server.ask('/api/studies', { method: 'POST', body: { name, by: 'MK' } })
    expect(answer.status).toBe(422)
    expect(answer.json.problems[0]).toMatchObject({ kind: 'fieldWrong', place: { name: 'name' } })
    expect(answer.json.problems[0].mend).not.toBe('')
    expect(answer.text.length).toBeLessThan(2000)
  })

  test('the same name twice makes two studies that can be told apart', async () => {
    const ids = []
    for (let i = 0; i < 2; i++) {
      ids.push((await server.ask('/api/studies', { method: 'POST', body: { name: 'Twice', by: 'MK' } })).json.id)
    }
    expect(ids).toEqual(['twice', 'twice-2'])
  })
})

describe('files and samples', () => {
  test.for(texts)('%s names a file: nothing is written outside the lab', async (name) => {
    const around = (): readonly string[] => readdirSync(dirname(server.place)).sort()
    const before = around()
    const path = `/api/uploads?name=${encodeURIComponent(name)}`
    const made = await server.ask(path, { method: 'POST', body: bytes })
    expect(made.status).toBe(201)
    expect(made.json.name).toBe(name)
    expect((await server.ask(`/api/uploads/${made.json.upload}`)).json.name).toBe(name)
    expect(around()).toEqual(before)
    expect(readdirSync(join(server.place, 'uploads')).every((file) => /^[0-9a-f]{32}\.(raw|json)$/.test(file))).toBe(
      true,
    )
    expect((await server.ask(`/api/uploads/${made.json.upload}`, { method: 'DELETE' })).status).toBe(204)
    expect(readdirSync(join(server.place, 'uploads'))).toEqual([])
  })

  test.for(refused)('a file called with $why is refused', async ({ name }) => {
    const path = `/api/uploads?name=${encodeURIComponent(name)}`
    const answer = await server.ask(path, { method: 'POST', body: bytes })
    expect(answer.status).toBe(400)
    expect(answer.json.problems[0].place.name).toBe('name')
  })

  test('a record keeps the name and the sample as texts, on every way out', async () => {
    const name = '<img src=x onerror=alert(1)>/../wax.csv'
    const sample = '<b>wax</b> & "co"'
    const record = await kept(server, { name, bytes, setup, study: 'Wax & <i>more</i>', sample })
    const shown = await server.ask(`/api/records/${record}`)
    expect(shown.json.record.name).toBe(name)
    const study = await server.ask(`/api/studies/${shown.json.record.study}`)
    expect(study.json.samples[0].name).toBe(sample)
    const report = await server.ask(`/api/records/${record}/report.html`)
    expect(report.status).toBe(200)
    expect(report.text).toContain('&lt;img src=x')
    expect(report.text).not.toContain('<img src=x')
    expect(report.headers['content-security-policy']).toMatch(/default-src 'none'/)
    expect(report.headers['content-security-policy']).not.toMatch(/script-src/)
    const zip = await server.ask(`/api/studies/${shown.json.record.study}/package.zip`)
    expect(zip.status).toBe(200)
    expect(zip.text).not.toContain('../wax.csv\u0000')
    const verified = await ended(
      server,
      (await server.ask(`/api/records/${record}/verify`, { method: 'POST' })).json.job,
    )
    expect(verified.done.verified).toEqual({ same: 1, findings: [] })
  })
})

describe('addresses', () => {
  test.for([
    '/../../etc/passwd',
    '/..%2f..%2fetc%2fpasswd',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/assets/../../lab/kufe.sqlite',
    '/..\\lab\\lab.json',
    '//etc/passwd.txt',
    '/%00.js',
    '/%zz',
  ])('%s leads to no file', async (path) => {
    const answer = await server.ask(path)
    expect([200, 400, 404]).toContain(answer.status)
    expect(answer.text).not.toMatch(/root:|SQLite|"kufe"/)
  })

  test.for(['/api/records/..%2F..%2Flab.json', '/api/uploads/..%2Fx', '/api/studies/..', '/api/records/%27%20or%201'])(
    '%s names nothing',
    async (path) => {
      const answer = await server.ask(path)
      expect([400, 404]).toContain(answer.status)
      expect(answer.headers['content-type']).toBe('application/problem+json')
    },
  )

  test('nothing of all this was a fault', () => {
    expect(server.faults).toEqual([])
    expect(existsSync(join(server.place, 'kufe.sqlite'))).toBe(true)
  })
})
