import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import { problemDetails, type Route, routes } from '../../src/server/contract/index.ts'
import { kept, type StartedServer, startedServer } from './startedServer.ts'

let server: StartedServer
let record = ''
beforeAll(async () => {
  server = await startedServer()
  record = await kept(server, {
    name: 'wax.csv',
    bytes: readFileSync('examples/lacquer/wax.csv'),
    setup: readFileSync('examples/lacquer/wax.setup.yaml', 'utf8'),
    ...{ study: 'Wax', sample: 'wax', ballSet: 'steel 1', replicate: 1 },
  })
})
afterAll(() => server[Symbol.asyncDispose]())

const all = Object.entries<Route>(routes)
const filled = (path: string): string =>
  path
    .replace('{study}', 'wax')
    .replace('{record}', record.slice(0, 12))
    .replace('{step}', '12')
    .replace(/\{(?:upload|job)\}/, '0'.repeat(32))
    .replace('{kind}', path.includes('lab') ? 'rig' : 'runSheet')
    .replace('{name}', 'own')

const gets = all.filter(
  ([id, { method, answer }]) => method === 'get' && answer instanceof z.ZodType && !/Paper|^look$|^job$/.test(id),
)

test.for(gets.map(([id, route]) => ({ id, route })))('$id answers as the contract says', async ({ route }) => {
  const answer = await server.ask(filled(route.path))
  expect(answer.status).toBe(route.status)
  const read = (route.answer as z.ZodType).safeParse(answer.json)
  expect(read.error?.issues ?? []).toEqual([])
  // Nothing comes that the contract does not name.
  expect(read.data).toEqual(answer.json)
})

describe('errors are problem details (RFC 9457) on every route', () => {
  const bad = all.filter(
    ([, { params, body, method }]) => params !== undefined || (body !== undefined && method !== 'get'),
  )

  test.for(bad.map(([id, route]) => ({ id, route })))('$id', async ({ route }) => {
    const path = route.params === undefined ? route.path : filled(route.path).replace(/\/[^/]*$/, '/%00')
    const answers = [
      ...(route.params === undefined ? [] : [await server.ask(path, { method: route.method.toUpperCase() })]),
      ...(route.body === undefined
        ? []
        : [
            await server.ask(filled(route.path), { method: route.method.toUpperCase(), body: { no: 'such field' } }),
            await server.ask(filled(route.path), {
              method: route.method.toUpperCase(),
              body: '{',
              headers: { 'content-type': 'application/json' },
            }),
            await server.ask(filled(route.path), { method: route.method.toUpperCase(), body: 'x' }),
          ]),
    ]
    for (const answer of answers) {
      expect(answer.status).toBeGreaterThanOrEqual(400)
      expect(answer.status).toBeLessThan(500)
      expect(answer.headers['content-type']).toBe('application/problem+json')
      const details = problemDetails.parse(answer.json)
      expect(details.status).toBe(answer.status)
      expect(details.problems.length).toBeGreaterThan(0)
      for (const { what, mend } of details.problems) expect([what, mend].every((text) => /[.?]$/.test(text))).toBe(true)
    }
  })

  test('an address that is none, and a method that it does not take', async () => {
    for (const [method, path] of [
      ['GET', '/api/no-such-thing'],
      ['PUT', '/api/lab'],
      ['PATCH', '/api/studies'],
    ]) {
      const answer = await server.ask(path, { method })
      expect(answer.status).toBe(404)
      expect(problemDetails.parse(answer.json).problems[0].kind).toBe('routeMissing')
    }
  })
})

describe('the OpenAPI document', () => {
  test('is version 3.1 and has every route with its parameters', async () => {
    const { json } = await server.ask('/api/openapi.json')
    expect(json.openapi).toMatch(/^3\.1\./)
    for (const [id, route] of all) {
      const operation = json.paths[route.path][route.method]
      expect(operation.operationId).toBe(id)
      const named = operation.parameters?.filter(({ in: place }: { in: string }) => place === 'path') ?? []
      expect(named.map(({ name }: { name: string }) => `{${name}}`).sort()).toEqual(
        (route.path.match(/\{\w+\}/g) ?? []).sort(),
      )
      expect(operation.responses[route.status]).toBeDefined()
    }
  })

  test('every reference leads to a schema that is there', async () => {
    const { json, text } = await server.ask('/api/openapi.json')
    const references = [...text.matchAll(/"\$ref":"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => name)
    expect(references.length).toBeGreaterThan(50)
    expect(references.filter((name) => !(name in json.components.schemas))).toEqual([])
    expect(text).not.toContain('$defs')
  })

  test('the page shows every route, and every link in it leads somewhere', async () => {
    const { text, headers } = await server.ask('/api')
    expect(headers['content-type']).toMatch(/^text\/html/)
    expect(text).not.toMatch(/<script|style=|https?:\/\//)
    for (const [id, { path }] of all) {
      expect(text).toContain(`id="${id}"`)
      expect(text).toContain(path)
    }
    const anchors = [...text.matchAll(/href="#([\w-]+)"/g)].map(([, name]) => name)
    expect(anchors.filter((name) => !text.includes(`id="${name}"`))).toEqual([])
    const style = await server.ask('/api/page.css')
    expect(style.headers['content-type']).toMatch(/^text\/css/)
  })
})
