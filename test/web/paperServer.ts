import { readdirSync, readFileSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import { parse } from 'yaml'
import { builtPage } from '../../src/server/page/builtPage.ts'
import { policy } from './policy.ts'

/** One version of a paper, as the contract has it. */
interface KeptPaper {
  readonly subject: 'study'
  readonly subjectId: string
  readonly kind: string
  readonly name: ''
  readonly version: number
  readonly supersedes: number | null
  readonly content: unknown
  readonly by: string
  readonly why: string
  readonly at: string
}

/** A lab in memory for tests of the page: studies without records, papers with versions, events. It can be killed and come back. */
export interface PaperServer {
  readonly address: string
  /** The question as it is kept now. */
  question(study: string): KeptPaper | undefined
  /** AB at another desk keeps a version; `unheard` where no event tells of it in time. */
  keep(study: string, content: unknown, how?: 'unheard'): void
  stop(): Promise<void>
  start(): Promise<void>
}

const root = new URL('../../', import.meta.url).pathname
const at = '2026-11-25T10:00:00.000Z'
const change = { number: 1, at, who: 'MK', why: 'first day' }
const titled = (id: string, name: string) => ({ id, name, note: '', version: 1, change })
const names: Readonly<Record<string, string>> = { runners: 'Drawer runners', fresh: 'A fresh study' }
const media: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
}

/** Starts the lab on a free port with the lacquer question in the study `runners`; `fresh` has none. */
export async function paperServer(): Promise<PaperServer> {
  const versions = new Map<string, KeptPaper[]>()
  const listeners = new Set<ServerResponse>()
  const lacquer = parse(readFileSync(join(root, 'examples/lacquer/question.yaml'), 'utf8'))
  const keep = (
    study: string,
    content: unknown,
    { by, why, heard = true }: Pick<KeptPaper, 'by' | 'why'> & { readonly heard?: boolean },
  ): KeptPaper => {
    const before = versions.get(study) ?? []
    const version = before.length + 1
    const place = { subject: 'study', subjectId: study, kind: 'question', name: '' } as const
    const paper = { ...place, version, supersedes: version > 1 ? version - 1 : null, content, by, why, at }
    versions.set(study, [...before, paper])
    const told = { number: version, kind: 'paper', id: 'question', study, record: null, version, by }
    for (const listener of heard ? listeners : []) listener.write(`event: changed\ndata: ${JSON.stringify(told)}\n\n`)
    return paper
  }
  const files = await pageFiles()
  keep('runners', lacquer, { by: 'MK', why: 'first day' })
  const server = createServer((request, response) => void answer(request, response).catch(() => response.destroy()))
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const path = new URL(request.url ?? '/', 'http://here').pathname
    const send = (status: number, body: unknown): void => {
      response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body))
    }
    if (path === '/api/events') {
      response.writeHead(200, { 'content-type': 'text/event-stream' }).write(': here\n\n')
      listeners.add(response)
      request.on('close', () => listeners.delete(response))
    } else if (path === '/api/lab')
      send(200, { name: 'Workshop, invented', people: ['MK', 'AB'], papers: [], demo: true })
    else if (path === '/api/studies') {
      const studies = Object.entries(names).map(([id, name]) => ({ ...titled(id, name), records: 0, papers: [] }))
      send(200, { studies })
    } else if (/^\/api\/studies\/[a-z]+$/.test(path)) {
      const id = path.split('/')[3]
      const papers = (versions.get(id) ?? []).slice(-1)
      send(200, { ...titled(id, names[id] ?? id), samples: [], records: [], papers })
    } else if (/^\/api\/studies\/[a-z]+\/papers\/question$/.test(path)) {
      const study = path.split('/')[3]
      const current = versions.get(study)?.at(-1)
      if (request.method === 'GET') {
        if (current === undefined)
          send(404, { type: 'notThere', title: 'Not there', status: 404, detail: '', problems: [] })
        else send(200, current)
        return
      }
      const pieces: Buffer[] = []
      for await (const piece of request) pieces.push(piece)
      const { content, by, why } = JSON.parse(Buffer.concat(pieces).toString('utf8'))
      const seen = Number(String(request.headers['if-match']).replaceAll('"', ''))
      if (seen === (current?.version ?? 0)) send(200, keep(study, content, { by, why }))
      else send(412, { type: 'superseded', title: 'Superseded', status: 412, detail: '', problems: [], current })
    } else if (path.startsWith('/api/')) {
      send(404, { type: 'notThere', title: 'Not there', status: 404, detail: '', problems: [] })
    } else {
      const found = files.get(path) ?? files.get('/index.html')
      if (found === undefined) throw new Error('the page is not built')
      response.writeHead(200, { 'content-type': found.type, 'content-security-policy': policy }).end(found.bytes)
    }
  }
  let port = 0
  const start = (): Promise<void> =>
    new Promise((resolve) => {
      server.listen(port, '127.0.0.1', () => {
        port = (server.address() as AddressInfo).port // it listens on a port
        resolve()
      })
    })
  const stop = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve())
      server.closeAllConnections()
    })
  await start()
  return {
    address: `http://127.0.0.1:${port}`,
    question: (study) => versions.get(study)?.at(-1),
    keep: (study, content, how) =>
      void keep(study, content, { by: 'AB', why: 'at another desk', heard: how !== 'unheard' }),
    start,
    stop,
  }
}

interface PageFile {
  readonly bytes: Buffer
  readonly type: string
}

/** The built page in memory, so that building it anew meanwhile changes nothing. */
async function pageFiles(): Promise<ReadonlyMap<string, PageFile>> {
  const built = await builtPage(() => undefined)
  if (!built.ok) throw new Error(built.problems.map(({ what }) => what).join('; '))
  const entries = readdirSync(built.value, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile())
  return new Map(
    entries.map((entry) => {
      const place = join(entry.parentPath, entry.name)
      const type = media[extname(entry.name)] ?? 'application/octet-stream'
      return [place.slice(built.value.length), { bytes: readFileSync(place), type }]
    }),
  )
}
