import type { AnsweredSheet } from '../../../../core/terms/index.ts'
import type { JobMade, KeepUpload, ReadingAnswers, UploadLook } from '../../../../server/contract/index.ts'
import { onReturn } from '../../../api/connection.ts'
import { refresh } from '../../../api/kept.ts'
import { Away, Refusal, request } from '../../../api/request.ts'
import { recordPaper } from '../../../api/usePaper.ts'
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
    const blank = { sent: 0, id: null, look: null, reading: {}, progress: null, refusal: null, record: null }
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
    const own = uploadAt(key)?.reading ?? {}
    change(key, { look, reading: isSilent(own) ? readingOfTwin(look) : own, phase: 'asking' })
  })
  if (!isSilent(uploadAt(key)?.reading ?? {})) await lookAgain(key)
}

const isSilent = (reading: ReadingAnswers): boolean => Object.keys(reading).length === 0

/** What a person said of a file with the same headings holds for this one too. */
function readingOfTwin(look: UploadLook): ReadingAnswers {
  const headings = (one: UploadLook): string => JSON.stringify(one.head?.headings ?? [])
  const twin = uploads.find(({ look: other, reading }) => {
    return other !== null && !isSilent(reading) && headings(other) === headings(look)
  })
  return twin?.reading ?? {}
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

/** Reads the file again with what a person said of its columns and how it is written. */
export async function mendReading(key: number, reading: ReadingAnswers): Promise<void> {
  change(key, { reading })
  await lookAgain(key)
}

async function lookAgain(key: number): Promise<void> {
  const upload = uploadAt(key)
  if (upload?.id === null || upload === undefined) return
  await guarded(key, async (signal) => {
    const body = { channels: upload.reading }
    change(key, { look: await request<UploadLook>(`/api/uploads/${upload.id}/look`, { method: 'POST', body, signal }) })
  })
}

/** What goes with a file that is kept. */
export interface KeptWith {
  /** Text of a setup, or the id of one that the lab has. */
  readonly setup: string
  /** What was read at the rig. */
  readonly sheet: AnsweredSheet | undefined
}

/** What each file in line is kept with. */
const inLine = new Map<number, KeptWith>()

/** Keeps a file as a record: reduced and fitted, with its run sheet where there is one. Two at a time: a browser has six lines to a server. */
export function keepUpload(key: number, along: KeptWith): void {
  const upload = uploadAt(key)
  if (upload === undefined || upload.id === null || upload.phase !== 'asking') return
  inLine.set(key, along)
  change(key, { phase: 'inLine', refusal: null })
  keepNext()
}

function keepNext(): void {
  const busy = uploads.filter(({ phase }) => phase === 'keeping').length
  const next = uploads.filter(({ phase }) => phase === 'inLine').slice(0, Math.max(0, atOnce - busy))
  for (const { key } of next) {
    const along = inLine.get(key)
    inLine.delete(key)
    if (along !== undefined) void keep(key, along)
  }
}

async function keep(key: number, { setup, sheet }: KeptWith): Promise<void> {
  const upload = uploadAt(key)
  if (upload === undefined) return
  change(key, { phase: 'keeping', progress: null })
  await guarded(key, async (signal) => {
    const body = keepBody(upload, setup)
    const made = await request<JobMade>(`/api/uploads/${upload.id}/keep`, { method: 'POST', body, signal })
    const done = await followJob(made.job, { signal, progress: (progress) => change(key, { progress }) })
    if (sheet !== undefined && done.record !== null && done.known !== true) await keepSheet(done.record, sheet)
    change(key, { phase: 'kept', record: done.record, progress: null })
    refresh('/api/studies')
  })
  const after = uploadAt(key)
  // What failed can be mended and kept again: the bytes still lie on the server.
  if (after?.phase === 'failed' || after?.phase === 'stopped') change(key, { phase: 'asking' })
  keepNext()
}

/** The run sheet lies with the record from its first day; what the study's sheet says later is another run. */
async function keepSheet(record: string, content: AnsweredSheet): Promise<void> {
  const body = { content, by: writer() === '' ? 'somebody' : writer(), why: 'filled in at the rig' }
  await request(recordPaper(record, 'runSheet'), { method: 'PUT', body, headers: { 'if-match': '"0"' } })
}

function keepBody({ said, reading, look }: Upload, setup: string): KeepUpload {
  const { sample, replicate, mountedBy, ballSet } = said
  return {
    channels: isSilent(reading) ? undefined : reading,
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
export function stopUpload(key: number): void {
  if (inLine.delete(key)) change(key, { phase: 'asking' })
  stops.get(key)?.abort()
}

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
