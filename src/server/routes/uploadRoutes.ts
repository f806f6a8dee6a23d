import type { Hono } from 'hono'
import type { KeepWords, LookedUpload, ReadingWords, Upload } from '../../bench/serve/index.ts'
import { done, failed, type Outcome } from '../../core/terms/index.ts'
import { tooLarge } from '../answer/readBody.ts'
import { bind } from '../bind.ts'
import { type KeepUpload, routes, type UploadLook } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'
import { beginKeeping } from '../jobs/keepJob.ts'

/** Files on their way into the lab. */
export function uploadRoutes(app: Hono, desk: ServerDesk): void {
  const { held, uploads } = desk
  bind(app, routes.upload, async ({ query, request }) => {
    if (Number(request.headers.get('content-length') ?? 0) > uploads.largest) return failed(tooLarge(uploads.largest))
    const { name, study = null } = query
    const at = held.outside.now().toISOString()
    const made = await uploads.receive({ name, study, at }, pieces(request))
    return made.ok ? done({ upload: made.value.id, name, size: made.value.size }) : made
  })
  bind(app, routes.look, ({ params }) => look(desk, params.upload, {}))
  bind(app, routes.lookAgain, ({ params, body }) => look(desk, params.upload, body.channels))
  bind(app, routes.dropUpload, async ({ params }) => {
    const upload = uploads.get(params.upload)
    if (!upload.ok) return upload
    uploads.drop(params.upload)
    return done(null)
  })
  bind(app, routes.keep, async ({ params, body }) => {
    const upload = uploads.get(params.upload)
    if (!upload.ok) return upload
    const running = desk.jobs.running(`keep ${params.upload}`)
    if (running !== undefined) return done({ job: running })
    const marked = uploads.mark(params.upload, wordsOf(body, upload.value))
    return marked.ok ? done({ job: beginKeeping(desk, params.upload) }) : marked
  })
}

async function* pieces({ body }: Request): AsyncGenerator<Uint8Array> {
  for await (const piece of body ?? []) yield piece
}

async function look(
  { uploads, pool, held }: ServerDesk,
  id: string,
  reading: ReadingWords,
): Promise<Outcome<UploadLook>> {
  const upload = uploads.get(id)
  if (!upload.ok) return upload
  const { name } = upload.value
  const looked = await pool.quickly('look', { file: uploads.file(id), name, reading })
  if (!looked.ok) return looked
  const { sha256 } = looked.value
  const record = sha256 === null ? undefined : await held.lab.records.get(sha256)
  return done(lookIn(upload.value, looked.value, record?.ok === true ? sha256 : null))
}

function lookIn({ id, name, size }: Upload, looked: LookedUpload, known: string | null): UploadLook {
  const { look: seen, rows, dialect, columns, problems } = looked
  return {
    ...{ upload: id, name, size, rows, known },
    columns: columns.map((column) => ({ ...column })),
    head:
      seen === null
        ? null
        : {
            headings: [...seen.headings],
            rows: seen.rows.map((row) => [...row]),
            firstLine: seen.firstLine,
          },
    dialect: dialect === null ? null : { ...dialect },
    preamble: (seen?.preamble ?? []).map((entry) => ({ ...entry })),
    problems: problems.map((problem) => ({ ...problem })),
  }
}

const wordsOf = (body: KeepUpload, { study }: Upload): KeepWords => {
  const { channels = {}, setup, sample, replicate, mountedBy, ballSet, day, by, why } = body
  return {
    ...{ reading: channels, setup, by, why },
    names: { study: body.study ?? study ?? undefined, sample },
    facts: { replicate, mountedBy, ballSet, day },
  }
}
