import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { request as httpRequest, type IncomingHttpHeaders } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { makeLab } from '../../src/bench/lab/index.ts'
import { startServer } from '../../src/server/index.ts'

/** What came back, whole. */
export interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly text: string
  /** The text as JSON. */
  // biome-ignore lint/suspicious/noExplicitAny: tests look into answers of every shape
  readonly json: any
}

export interface AskOptions {
  readonly method?: string
  readonly headers?: Readonly<Record<string, string>>
  /** Sent as it is where it is text or bytes, else as JSON. */
  readonly body?: unknown
  /** Loopback address to ask at. */
  readonly at?: string
}

/** A server with a real lab, reached over real HTTP. */
export interface StartedServer {
  readonly port: number
  readonly address: string
  /** Folder of the lab. */
  readonly place: string
  /** Folder of the page. */
  readonly page: string
  readonly faults: readonly unknown[]
  ask(path: string, options?: AskOptions): Promise<Answer>
  /** Closes the server and opens it again on the same lab. */
  again(): Promise<void>
  [Symbol.asyncDispose](): Promise<void>
}

export const outside = {
  now: () => new Date(),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe 0.0.0-test',
}

/** Starts one on a new lab; `page` holds files of a page, by their paths. */
export async function startedServer({
  largestUpload,
  database,
  page = { 'index.html': '<!doctype html><html><head><title>Bench</title></head><body></body></html>' },
}: {
  readonly largestUpload?: number
  /** Address of an empty PostgreSQL database; a folder if left out. */
  readonly database?: string
  readonly page?: Readonly<Record<string, string>>
} = {}): Promise<StartedServer> {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-server-'))
  const place = database ?? join(folder, 'lab')
  const pageFolder = join(folder, 'page')
  for (const [path, text] of Object.entries(page)) {
    mkdirSync(join(pageFolder, path, '..'), { recursive: true })
    writeFileSync(join(pageFolder, path), text)
  }
  const call = { place, who: 'MK', why: '' }
  const lab = await makeLab(call, 'Workshop', outside)
  if (!lab.ok) throw new Error(lab.problems[0].what)
  const faults: unknown[] = []
  const start = async () => {
    const args = { call, port: 0, page: pageFolder, threads: 1, largestUpload, onFault: (e: unknown) => faults.push(e) }
    const running = await startServer(args, outside)
    if (!running.ok) throw new Error(running.problems[0].what)
    return running.value
  }
  let running = await start()
  return {
    get port() {
      return running.port
    },
    get address() {
      return running.address
    },
    place,
    page: pageFolder,
    faults,
    ask: (path, options) => ask(running.port, path, options),
    again: async () => {
      await running.close()
      running = await start()
    },
    [Symbol.asyncDispose]: async () => {
      await running.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
    },
  }
}

/** Asks without any of the courtesies of `fetch`, so that every header is as the test says. */
function ask(port: number, path: string, { method = 'GET', headers = {}, body, at = '127.0.0.1' }: AskOptions = {}) {
  const raw = typeof body === 'string' || body instanceof Uint8Array
  const content = body === undefined ? undefined : raw ? body : JSON.stringify(body)
  const type = raw ? 'application/octet-stream' : 'application/json'
  const all = { ...(content === undefined ? {} : { 'content-type': type }), ...headers }
  return new Promise<Answer>((resolve, reject) => {
    const sent = httpRequest({ host: at, port, path, method, headers: all, agent: false }, (response) => {
      const pieces: Buffer[] = []
      response.on('data', (piece) => pieces.push(piece))
      response.on('error', reject)
      response.on('end', () => {
        const text = Buffer.concat(pieces).toString('utf8')
        const json = response.headers['content-type']?.includes('json') ? JSON.parse(text) : undefined
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text, json })
      })
    })
    sent.on('error', reject)
    sent.end(content)
  })
}

/** Waits for the end of a job and gives the job. */
// biome-ignore lint/suspicious/noExplicitAny: as above
export async function ended(server: StartedServer, job: string): Promise<any> {
  for (;;) {
    const { json } = await server.ask(`/api/jobs/${job}`)
    if (json.state !== 'running') return json
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
}

/** Hands in a file and keeps it as a record; gives the record's id. */
export async function kept(
  server: StartedServer,
  { name, bytes, setup, ...words }: { name: string; bytes: Uint8Array; setup: string; [word: string]: unknown },
): Promise<string> {
  const made = await server.ask(`/api/uploads?name=${encodeURIComponent(name)}`, { method: 'POST', body: bytes })
  const path = `/api/uploads/${made.json.upload}/keep`
  const job = await server.ask(path, { method: 'POST', body: { setup, by: 'MK', why: '', ...words } })
  const end = await ended(server, job.json.job)
  if (end.state !== 'done') throw new Error(JSON.stringify(end.problem))
  return end.done.record
}
