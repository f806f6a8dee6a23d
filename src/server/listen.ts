import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { createAdaptorServer } from '@hono/node-server'
import { done, failed, type Outcome, type Problem } from '../core/terms/index.ts'

type Fetch = (request: Request) => Response | Promise<Response>

/** A server that listens on the loopback addresses of this machine and on nothing else. */
export interface Listening {
  readonly port: number
  /** Takes no new request, lets those that run end, and after a while cuts what is left. */
  close(): Promise<void>
}

/** How long running requests may take when the server closes, ms. */
const lastWords = 3000

/** Loopback, by both families; a machine without IPv6 has only the first. */
const addresses = ['127.0.0.1', '::1'] as const

/** Listens on the port, or on a free one where it is 0. */
export async function listen(fetch: Fetch, port: number): Promise<Outcome<Listening>> {
  for (let tries = 0; ; tries++) {
    const first = await openAt(fetch, addresses[0], port)
    if (first instanceof Error) return failed(portRefused(port, String(first.code)))
    const bound = (first.address() as AddressInfo).port // it listens on a port, not on a pipe
    const second = await openAt(fetch, addresses[1], bound)
    if (!(second instanceof Error)) return done({ port: bound, close: () => closeAll([first, second]) })
    if (noSecondFamily.has(String(second.code))) return done({ port: bound, close: () => closeAll([first]) })
    await closeAll([first])
    // Somebody has that port of the other family alone: a free one is looked for again.
    if (port !== 0 || tries > 20) return failed(portRefused(bound, String(second.code)))
  }
}

const noSecondFamily = new Set(['EADDRNOTAVAIL', 'EAFNOSUPPORT', 'EINVAL'])

function openAt(fetch: Fetch, hostname: string, port: number): Promise<Server | NodeJS.ErrnoException> {
  const server = createAdaptorServer({ fetch }) as Server // without other options it makes a plain one
  server.headersTimeout = 20_000
  server.requestTimeout = 0 // a long file over a slow disk may take its time; its size is bounded
  return new Promise((resolve) => {
    server.once('error', resolve)
    server.listen({ port, host: hostname, ipv6Only: true }, () => {
      server.off('error', resolve)
      resolve(server)
    })
  })
}

async function closeAll(servers: readonly Server[]): Promise<void> {
  await Promise.all(
    servers.map((server) => {
      const cut = setTimeout(() => server.closeAllConnections(), lastWords)
      return new Promise<void>((resolve) => {
        server.close(() => {
          clearTimeout(cut)
          resolve()
        })
        server.closeIdleConnections()
      })
    }),
  )
}

const portRefused = (port: number, code: string): Problem => ({
  kind: 'portTaken',
  class: 'wrongUse',
  place: { name: 'port', cell: String(port) },
  what:
    code === 'EADDRINUSE'
      ? `Port ${port} is taken: perhaps a bench is open already.`
      : `Port ${port} may not be used (${code}).`,
  mend: 'Open the bench that is there, or choose another port; --port 0 finds a free one.',
})
