import { request } from 'node:http'
import { brotliDecompressSync, gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type StartedServer, startedServer } from './startedServer.ts'

const script = `export const words = ${JSON.stringify('friction '.repeat(500))}\n`
let server: StartedServer
beforeAll(async () => {
  server = await startedServer({
    page: {
      'index.html': '<!doctype html><html><head><title>Bench</title></head><body>page</body></html>',
      'assets/index-AbCd1234.js': script,
      'sign.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    },
  })
})
afterAll(() => server[Symbol.asyncDispose]())

/** The body as it came, not unpacked. */
const raw = (path: string, encoding: string): Promise<{ encoding: string | undefined; bytes: Buffer }> =>
  new Promise((resolve, reject) => {
    const headers = { host: `localhost:${server.port}`, 'accept-encoding': encoding }
    request({ host: '127.0.0.1', port: server.port, path, headers, agent: false }, (response) => {
      const pieces: Buffer[] = []
      response.on('data', (piece) => pieces.push(piece))
      response.on('end', () =>
        resolve({ encoding: response.headers['content-encoding'], bytes: Buffer.concat(pieces) }),
      )
    })
      .on('error', reject)
      .end()
  })

test('files go out pressed as the browser takes them, and unpack to what they are', async () => {
  const path = '/assets/index-AbCd1234.js'
  const brotli = await raw(path, 'gzip, deflate, br')
  expect(brotli.encoding).toBe('br')
  expect(brotliDecompressSync(brotli.bytes).toString()).toBe(script)
  const gzip = await raw(path, 'gzip')
  expect(gzip.encoding).toBe('gzip')
  expect(gunzipSync(gzip.bytes).toString()).toBe(script)
  const plain = await raw(path, 'identity')
  expect(plain.encoding).toBeUndefined()
  expect(plain.bytes.toString()).toBe(script)
  expect(brotli.bytes.length).toBeLessThan(script.length / 10)
})

test('a file with a checksum in its name is kept for good, others are asked for again', async () => {
  const named = await server.ask('/assets/index-AbCd1234.js')
  expect(named.headers['cache-control']).toContain('immutable')
  const sign = await server.ask('/sign.svg')
  expect(sign.headers['cache-control']).toBe('no-cache')
  const again = await server.ask('/sign.svg', { headers: { 'if-none-match': String(sign.headers.etag) } })
  expect(again.status).toBe(304)
})

test('every address of the bench is its page, with a nonce of its own and no inline script or style', async () => {
  const nonces = new Set<string>()
  for (const path of ['/', '/study/wax/read', '/study/wax/read?point=3']) {
    const { status, headers, text } = await server.ask(path)
    expect(status).toBe(200)
    const policy = String(headers['content-security-policy'])
    expect(policy).toContain("script-src 'self'")
    expect(policy).not.toMatch(/unsafe|\*|https?:/)
    const nonce = /'nonce-([^']+)'/.exec(policy)?.[1] ?? ''
    expect(text).toContain(`<meta property="csp-nonce" content="${nonce}"`)
    expect(headers['cache-control']).toBe('no-store')
    nonces.add(nonce)
  }
  expect(nonces.size).toBe(3)
})

test('a file that is not there is not the page', async () => {
  const answer = await server.ask('/assets/gone-12345678.js')
  expect(answer.status).toBe(404)
  expect(answer.text).not.toContain('<html')
})
