// A PostgreSQL server for tests: Debian's package, started in a temporary folder, reached by a socket in it alone.
// As a program it sees to it that the package is there: node scripts/postgresForTests.ts [--install]

import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import pg from 'pg'

export interface TestServer {
  /** Address of a database on it. */
  readonly address: string
  /** Makes an empty one and gives its address. */
  readonly newDatabase: () => Promise<string>
  readonly stop: () => Promise<void>
}

/** Why there is no server. */
export interface NoServer {
  readonly why: string
}

/** Folder with `initdb` and `postgres`; Debian keeps them out of the path. */
function programs(): string | undefined {
  const debian = '/usr/lib/postgresql'
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  const folders = [
    ...versions.map((version) => join(debian, version, 'bin')),
    ...(process.env.PATH ?? '').split(delimiter),
  ]
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')))
}

/** The server refuses to run as root, so root lends it another user. */
function user(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {}
  for (const name of ['postgres', 'nobody']) {
    const line = readFileSync('/etc/passwd', 'utf8')
      .split('\n')
      .find((entry) => entry.startsWith(`${name}:`))
    if (line === undefined) continue
    const [uid, gid] = line.split(':').slice(2, 4).map(Number)
    return { uid, gid }
  }
  return {}
}

/** Ends the server and removes its folder when our end of its input closes: also when we are killed. */
const keeper = `"$1/postgres" -D "$2/data" -k "$2" -c listen_addresses= -c fsync="$3" -c max_connections=60 &
read -r end; kill -INT $!; wait $!; cd /; rm -rf "$2"`

/** Starts a server of its own. `durable` false spares it the disk: right for tests, wrong for measurements. */
export async function startPostgres({ durable }: { readonly durable: boolean }): Promise<TestServer | NoServer> {
  const bin = programs()
  if (bin === undefined) return { why: 'PostgreSQL is not installed (Debian: apt-get install postgresql)' }
  const folder = mkdtempSync(join(tmpdir(), 'kufe-postgres-'))
  const as = user()
  if (as.uid !== undefined && as.gid !== undefined) chownSync(folder, as.uid, as.gid)
  const args = ['-D', join(folder, 'data'), '-U', 'kufe', '-A', 'trust', '-E', 'UTF8', '--no-sync', '--locale=C.UTF-8']
  const made = spawnSync(join(bin, 'initdb'), args, { ...as, cwd: folder, encoding: 'utf8' })
  if (made.status !== 0) {
    rmSync(folder, { recursive: true, force: true })
    return { why: `initdb failed: ${made.error?.message ?? made.stderr.trim()}` }
  }
  const shell = ['-c', keeper, 'sh', bin, folder, durable ? 'on' : 'off']
  // Detached: Ctrl-C must reach us alone, so that the keeper can clean up behind us.
  const server = spawn('sh', shell, { ...as, cwd: folder, stdio: ['pipe', 'ignore', 'pipe'], detached: true })
  const heard: string[] = []
  server.stderr?.setEncoding('utf8').on('data', (text: string) => heard.push(text))
  const address = `postgres://kufe@${encodeURIComponent(folder)}/postgres`
  const up = await comesUp(address, server)
  if (up) return { address, newDatabase: schemaMaker(address), stop: () => stop(server) }
  await stop(server)
  return { why: `PostgreSQL did not start: ${heard.join('').trim()}` }
}

async function comesUp(address: string, server: ChildProcess): Promise<boolean> {
  for (let tries = 0; tries < 300 && server.exitCode === null; tries++) {
    const client = new pg.Client({ connectionString: address })
    try {
      await client.connect()
      return true
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100))
    } finally {
      await client.end().catch(() => {})
    }
  }
  return false
}

/** Names that several processes on one server do not share. A schema of its own is as good as a database and made at once. */
function schemaMaker(address: string): TestServer['newDatabase'] {
  let count = 0
  return async () => {
    const name = `lab_${process.pid}_${count++}`
    const client = new pg.Client({ connectionString: address })
    await client.connect()
    await client.query(`create schema ${name}`)
    await client.end()
    return `${address}?options=${encodeURIComponent(`-c search_path=${name}`)}`
  }
}

function stop(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return Promise.resolve()
  return new Promise((resolve) => {
    server.on('exit', () => resolve())
    server.stdin?.end()
  })
}

/** A server that another process started, and stops. */
export const serverAt = (address: string): TestServer => ({
  address,
  newDatabase: schemaMaker(address),
  stop: async () => {},
})

/** Installs Debian's package where that is possible. Gives why not, or nothing. */
function install(): string | undefined {
  if (process.getuid?.() !== 0) return 'installing a package needs root'
  const aptGet = '/usr/bin/apt-get'
  if (!existsSync(aptGet)) return `this system has no ${aptGet}`
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'postgresql']]) {
    const { status, stderr } = spawnSync(aptGet, args, { env, encoding: 'utf8' })
    if (status !== 0) return `apt-get ${args[0]} failed: ${stderr.trim()}`
  }
  return undefined
}

if (import.meta.main) {
  const failure = programs() === undefined && process.argv.includes('--install') ? install() : undefined
  const bin = programs()
  const version = bin && spawnSync(join(bin, 'postgres'), ['--version'], { encoding: 'utf8' }).stdout.trim()
  process.stdout.write(`${version ?? `PostgreSQL is not there${failure === undefined ? '' : `: ${failure}`}.`}\n`)
  process.exitCode = bin === undefined ? 1 : 0
}
