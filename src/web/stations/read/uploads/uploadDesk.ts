import type { JobMade, KeepUpload, UploadLook } from '../../../../server/contract/index.ts'
import { onReturn } from '../../../api/connection.ts'
import { refresh } from '../../../api/kept.ts'
import { Away, Refusal, request } from '../../../api/request.ts'
import { writer } from '../../../api/writer.ts'
import { followJob, Stopped } from './followJob.ts'
import { nameGuess } from './nameGuess.ts'
import { sendFile } from './sendFile.ts'
import type { Upload, UploadSaid } from './upload.ts'

/** Files that are sent at one time. */
const atOnce = 2

let uploads: readonly Upload[] = []
let next = 1
const stops = new Map<number, AbortController>()
const listeners = new Set<() => void>()

export const uploadsNow = (): readonly Upload[] => uploads

export function listenUploads(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

function put(all: readonly Upload[]): void {
  uploads = all
  for (const listener of listeners) listener()
}

function change(key: number, to: Partial<Upload>): void {
  put(uploads.map((one) => (one.key === key ? { ...one, ...to } : one)))
}

const uploadAt = (key: number): Upload | undefined => uploads.find((one) => one.key === key)

/** Takes files in; they are sent two at a time. */
export function dropFiles(study: string, files: readonly File[]): void {
  const added = files.map((file): Upload => {
    const said = { ...nameGuess(file.name), mountedBy: '', ballSet: '' }
    const blank = { sent: 0, id: null, look: null, columns: {}, progress: null, refusal: null, record: null }
    return { key: next++, study, file, phase: 'queued', said, ...blank }
  })
  put([...uploads, ...added])
  pump()
}

function pump(): void {
  const busy = uploads.filter(({ phase }) => phase === 'sending' || phase === 'looking').length
  for (const { key } of uploads.filter(({ phase }) => phase === 'queued').slice(0, Math.max(0, atOnce - busy))) {
    void send(key)
  }
}

/** What came to grief while the server was away goes on when it is back. */
onReturn(() => {
  for (const { key, phase } of uploads) if (phase === 'away') change(key, { phase: 'queued', sent: 0 })
  pump()
})

async function send(key: number): Promise<void> {
  const upload = uploadAt(key)
  if (upload === undefined) return
  change(key, { phase: 'sending', refusal: null })
  await guarded(key, async (signal) => {
    const progress = (sent: number, of: number): void => change(key, { sent: of > 0 ? sent / of : 0 })
    const made = await sendFile(upload.file, { study: upload.study, signal, progress })
    change(key, { id: made.upload, phase: 'looking', sent: 1 })
    const look = await request<UploadLook>(`/api/uploads/${made.upload}`, { signal })
    const own = uploadAt(key)?.columns ?? {}
    change(key, { look, columns: Object.keys(own).length > 0 ? own : columnsOfTwin(look), phase: 'asking' })
  })
  if (Object.keys(uploadAt(key)?.columns ?? {}).length > 0) await lookAgain(key)
}

/** What a person mended in a file with the same headings holds for this one too. */
function columnsOfTwin(look: UploadLook): Upload['columns'] {
  const headings = (one: UploadLook): string => JSON.stringify(one.head?.headings ?? [])
  const twin = uploads.find(({ look: other, columns }) => {
    return other !== null && Object.keys(columns).length > 0 && headings(other) === headings(look)
  })
  return twin?.columns ?? {}
}

/** Runs one stretch of work on a file and writes down how it ended badly. */
async function guarded(key: number, work: (signal: AbortSignal) => Promise<void>): Promise<void> {
  const stop = new AbortController()
  stops.set(key, stop)
  try {
    await work(stop.signal)
  } catch (error) {
    if (stop.signal.aborted || error instanceof Stopped) change(key, { phase: 'stopped', progress: null })
    else if (error instanceof Away) change(key, { phase: 'away', id: null, progress: null })
    // The server was started anew and has forgotten the file; it is still here.
    else if (error instanceof Refusal && error.problem.status === 404) change(key, { phase: 'queued', id: null })
    else if (error instanceof Refusal) change(key, { phase: 'failed', refusal: error, progress: null })
    else throw error
  } finally {
    stops.delete(key)
    pump()
  }
}

export const say = (key: number, said: Partial<UploadSaid>): void => {
  const upload = uploadAt(key)
  if (upload !== undefined) change(key, { said: { ...upload.said, ...said } })
}

/** Reads the file again with what a person said of its columns. */
export async function mendColumns(key: number, columns: Upload['columns']): Promise<void> {
  change(key, { columns })
  await lookAgain(key)
}

async function lookAgain(key: number): Promise<void> {
  const upload = uploadAt(key)
  if (upload?.id === null || upload === undefined) return
  await guarded(key, async (signal) => {
    const body = { channels: { columns: upload.columns } }
    change(key, { look: await request<UploadLook>(`/api/uploads/${upload.id}/look`, { method: 'POST', body, signal }) })
  })
}

/** Keeps a file as a record with a setup: its text, or the id of one that the lab has. */
export async function keepUpload(key: number, setup: string): Promise<void> {
  const upload = uploadAt(key)
  if (upload?.id === null || upload === undefined || upload.phase === 'keeping') return
  change(key, { phase: 'keeping', refusal: null, progress: null })
  await guarded(key, async (signal) => {
    const body = keepBody(upload, setup)
    const made = await request<JobMade>(`/api/uploads/${upload.id}/keep`, { method: 'POST', body, signal })
    const done = await followJob(made.job, { signal, progress: (progress) => change(key, { progress }) })
    change(key, { phase: 'kept', record: done.record, progress: null })
    refresh('/api/studies')
  })
  const after = uploadAt(key)
  // What failed can be mended and kept again: the bytes still lie on the server.
  if (after?.phase === 'failed' || after?.phase === 'stopped') change(key, { phase: 'asking' })
}

function keepBody({ said, columns, look }: Upload, setup: string): KeepUpload {
  const { sample, replicate, mountedBy, ballSet } = said
  return {
    channels: Object.keys(columns).length === 0 ? undefined : { columns },
    setup,
    sample: sample.trim() === '' ? undefined : sample.trim(),
    replicate: replicate ?? undefined,
    mountedBy: mountedBy.trim() === '' ? undefined : mountedBy.trim(),
    ballSet: ballSet.trim() === '' ? undefined : ballSet.trim(),
    by: writer() === '' ? 'somebody' : writer(),
    why: `read in from ${look?.name ?? 'a file'}`,
  }
}

/** Stops what goes on with a file. */
export const stopUpload = (key: number): void => stops.get(key)?.abort()

/** Sends a stopped or failed file once more. */
export function again(key: number): void {
  change(key, { phase: 'queued', sent: 0, refusal: null, id: null, look: null })
  pump()
}

/** Takes a file off the list; the server throws its copy away. */
export function dropUpload(key: number): void {
  const upload = uploadAt(key)
  stopUpload(key)
  put(uploads.filter((one) => one.key !== key))
  if (upload?.id != null && upload.phase !== 'kept') {
    request(`/api/uploads/${upload.id}`, { method: 'DELETE' }).catch(() => undefined)
  }
}

/** Takes all that were kept off the list. */
export const clearKept = (study: string): void =>
  put(uploads.filter((one) => one.study !== study || one.phase !== 'kept'))
