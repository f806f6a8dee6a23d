import { createReadStream, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import type { ReadableStream as NodeStream } from 'node:stream/web'
import type { Hono } from 'hono'
import { decisionBytes } from '../../bench/compare/index.ts'
import { done, type Outcome } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { reportPolicy } from '../guard/safeHeaders.ts'

/** What leaves the lab. */
export function reportRoutes(app: Hono, desk: ServerDesk): void {
  bind(app, routes.reportHtml, ({ params }) => report(desk, params.record, 'html'))
  bind(app, routes.reportPdf, ({ params }) => report(desk, params.record, 'pdf'))
  bind(app, routes.decisionHtml, ({ params }) => decision(desk, params.study, 'html'))
  bind(app, routes.decisionPdf, ({ params }) => decision(desk, params.study, 'pdf'))
  bind(app, routes.package, ({ params }) => packaged(desk, params.study))
}

async function report({ pool, held }: ServerDesk, word: string, form: 'html' | 'pdf'): Promise<Outcome<Response>> {
  const record = await held.lab.records.get(word)
  if (!record.ok) return record
  const bytes = await pool.quickly('report', { word: record.value.id, form })
  if (!bytes.ok) return bytes
  const headers = headersOf(form, `report-${record.value.id.slice(0, 12)}`)
  return done(new Response(new Uint8Array(bytes.value), { headers }))
}

/** The decision as its paper has it now. */
async function decision({ held }: ServerDesk, study: string, form: 'html' | 'pdf'): Promise<Outcome<Response>> {
  const written = await decisionBytes(held, study, form)
  if (!written.ok) return written
  return done(new Response(written.value, { headers: headersOf(form, `decision-${study}`) }))
}

const headersOf = (form: 'html' | 'pdf', name: string): Record<string, string> => ({
  'content-type': form === 'html' ? 'text/html; charset=utf-8' : 'application/pdf',
  'content-disposition': `inline; filename="${name}.${form}"`,
  'content-security-policy': reportPolicy,
  'cache-control': 'no-store',
})

/** Written whole beside the lab first: what is sent is a package that can be read. */
async function packaged({ pool, held }: ServerDesk, word: string): Promise<Outcome<Response>> {
  const study = await held.lab.studies.get(word)
  if (!study.ok) return study
  const folder = mkdtempSync(join(tmpdir(), 'kufe-package-'))
  const out = join(folder, 'package.zip')
  const clear = (): void => rmSync(folder, { recursive: true, force: true })
  try {
    const written = await pool.quickly('package', { study: study.value.id, out })
    if (!written.ok) {
      clear()
      return written
    }
    const stream = createReadStream(out)
    stream.once('close', clear)
    const body = Readable.toWeb(stream) as NodeStream<Uint8Array> & ReadableStream<Uint8Array> // one and the same at run time
    return done(
      new Response(body, {
        headers: {
          'content-type': 'application/zip',
          'content-length': String(statSync(out).size),
          'content-disposition': `attachment; filename="${study.value.id}.zip"`,
          'cache-control': 'no-store',
        },
      }),
    )
  } catch (error) {
    clear()
    throw error
  }
}
