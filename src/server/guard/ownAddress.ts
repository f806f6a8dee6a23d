import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

/** Names by which a loopback server is known to its own machine. */
const ownNames = ['localhost', '127.0.0.1', '[::1]'] as const

/** What a request says of where it came to and whence. */
export interface Asked {
  readonly host: string | undefined
  readonly origin: string | undefined
  /** Sec-Fetch-Site, which browsers send and pages cannot forge. */
  readonly site: string | undefined
  readonly path: string
}

/**
 * Refuses what does not come from a page of ours. A foreign page may reach a loopback server by a name of its own that it
 * lets point here (DNS rebinding): then `Host` is that name. Or it asks across origins: then `Origin` is its own, and the
 * browser says so in `Sec-Fetch-Site`.
 */
export function ownAddress({ host, origin, site, path }: Asked, port: number): Outcome<null> {
  const hosts = ownNames.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]))
  if (host === undefined || !hosts.includes(host.toLowerCase())) return failed(hostForeign(host, port))
  const origins = hosts.map((one) => `http://${one}`)
  if (origin !== undefined && !origins.includes(origin.toLowerCase())) return failed(originForeign(origin))
  const foreign = site !== undefined && site !== 'same-origin' && site !== 'none'
  // A link on some page may lead to the bench; it may not ask for data.
  if (foreign && path.startsWith('/api')) return failed(originForeign(site))
  return done(null)
}

const hostForeign = (host: string | undefined, port: number): Problem => ({
  kind: 'hostForeign',
  class: 'wrongUse',
  place: { name: 'host', cell: host?.slice(0, 80) },
  what: 'This server answers to its own names alone.',
  mend: `Ask for http://localhost:${port}/.`,
})

const originForeign = (origin: string): Problem => ({
  kind: 'originForeign',
  class: 'wrongUse',
  place: { name: 'origin', cell: origin.slice(0, 80) },
  what: 'Another page asks for this.',
  mend: 'Open the bench by its own address; other pages get no answer.',
})
