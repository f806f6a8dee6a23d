import { connect } from 'node:net'
import { networkInterfaces } from 'node:os'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { ownAddress } from '../../src/server/guard/ownAddress.ts'
import { type StartedServer, startedServer } from './startedServer.ts'

let server: StartedServer
beforeAll(async () => {
  server = await startedServer()
})
afterAll(() => server[Symbol.asyncDispose]())

describe('Host: a page elsewhere may let its own name point here (DNS rebinding)', () => {
  const own = (name: string) => `${name}:${server.port}`

  test.for(['localhost', '127.0.0.1', '[::1]', 'LOCALHOST'])('%s is ours', async (name) => {
    expect((await server.ask('/api/lab', { headers: { host: own(name) } })).status).toBe(200)
  })

  test.for(['evil.example', 'localhost.evil.example', '127.0.0.1.nip.example', '127.0.0.2', '0.0.0.0', 'localhost.'])(
    '%s is refused, for data and for pages',
    async (name) => {
      for (const path of ['/api/lab', '/', '/api']) {
        const answer = await server.ask(path, { headers: { host: own(name) } })
        expect(answer.status).toBe(421)
        expect(answer.json.problems[0]).toMatchObject({ kind: 'hostForeign', place: { name: 'host' } })
      }
    },
  )

  test.for(['evil.example@localhost', '[::ffff:127.0.0.1]', 'localhost/evil'])(
    '%s is no host at all, and is refused before anybody looks',
    async (name) => expect((await server.ask('/api/lab', { headers: { host: own(name) } })).status).toBe(400),
  )

  test('our name with another port, or none, is refused', async () => {
    for (const host of ['localhost', `localhost:${server.port + 1}`, 'localhost:80']) {
      expect((await server.ask('/api/lab', { headers: { host } })).status).toBe(421)
    }
  })
})

describe('Origin and Sec-Fetch-Site: other pages get nothing and change nothing', () => {
  test.for(['http://evil.example', 'null', 'https://localhost', 'http://localhost', 'http://localhost:1', 'file://'])(
    'origin %s is refused',
    async (origin) => {
      const body = { name: 'Planted', by: 'X' }
      const answer = await server.ask('/api/studies', { method: 'POST', headers: { origin }, body })
      expect(answer.status).toBe(403)
      expect(answer.headers['access-control-allow-origin']).toBeUndefined()
      expect((await server.ask('/api/studies')).json.studies).toEqual([])
    },
  )

  test('our own origin is heard', async () => {
    const origin = `http://localhost:${server.port}`
    expect((await server.ask('/api/lab', { headers: { origin } })).status).toBe(200)
  })

  test('an asking across origins is not granted beforehand', async () => {
    const headers = { origin: 'http://evil.example', 'access-control-request-method': 'PUT' }
    const answer = await server.ask('/api/lab', { method: 'OPTIONS', headers })
    expect(answer.status).toBe(403)
    expect(answer.headers['access-control-allow-methods']).toBeUndefined()
  })

  test('pictures and scripts of other pages get no data; a link on them opens the bench', async () => {
    const headers = { 'sec-fetch-site': 'cross-site' }
    expect((await server.ask('/api/lab', { headers })).status).toBe(403)
    expect((await server.ask('/', { headers })).status).toBe(200)
    expect((await server.ask('/api/lab', { headers: { 'sec-fetch-site': 'same-origin' } })).status).toBe(200)
  })
})

test('it listens on both loopback addresses and on no other', async () => {
  expect(
    (await server.ask('/api/lab', { at: '127.0.0.1', headers: { host: `localhost:${server.port}` } })).status,
  ).toBe(200)
  const others = Object.values(networkInterfaces())
    .flat()
    .filter((one) => one !== undefined && !one.internal)
    .map((one) => one?.address ?? '')
  for (const host of others) expect(await reaches(host, server.port)).toBe(false)
  if (
    Object.values(networkInterfaces())
      .flat()
      .some((one) => one?.address === '::1')
  ) {
    expect(await reaches('::1', server.port)).toBe(true)
  }
})

const reaches = (host: string, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 2000 })
    const end = (found: boolean): void => {
      socket.destroy()
      resolve(found)
    }
    socket
      .on('connect', () => end(true))
      .on('error', () => end(false))
      .on('timeout', () => end(false))
  })

test('every answer bears the safe headers, also when it refuses', async () => {
  for (const [path, headers] of [
    ['/api/lab', {}],
    ['/', {}],
    ['/api/nothing', {}],
    ['/api/lab', { host: 'evil.example' }],
  ] as const) {
    const answer = await server.ask(path, { headers })
    expect(answer.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
    })
    expect(answer.headers['content-security-policy']).toMatch(/default-src 'none'/)
    expect(answer.headers['content-security-policy']).not.toMatch(/unsafe-inline|unsafe-eval|\*/)
  }
})

test('a request without a Host is refused', () => {
  const asked = { host: undefined, origin: undefined, site: undefined, path: '/' }
  expect(ownAddress(asked, 4700)).toMatchObject({ ok: false, problems: [{ kind: 'hostForeign' }] })
})
