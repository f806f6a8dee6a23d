import { Worker } from 'node:worker_threads'
import type { PdfAnswer, PdfPage, PdfTask } from './pdfWorker.ts'

/** PDF/A-3a: an archive copy (A-3b) whose structure can be read aloud as well. The typesetter refuses what breaks it. */
const standard = 'a-3a'

/**
 * Content set as one of our pages: tagged, archivable (PDF/A-3a), fonts inside. Equal content gives equal bytes. Throws where the
 * content cannot be set, which is a mistake of ours.
 */
export function setPages(page: PdfPage, content: object): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const id = next++
    waiting.set(id, { page, resolve, reject })
    running().postMessage({ id, page, content, standard } satisfies PdfTask)
  })
}

interface Waiting {
  readonly page: PdfPage
  readonly resolve: (pdf: Uint8Array) => void
  readonly reject: (error: Error) => void
}

const waiting = new Map<number, Waiting>()
let next = 1
let worker: Worker | undefined

/** The one thread that sets pages, started when it is first needed; it keeps no process alive while nobody waits. */
function running(): Worker {
  if (worker === undefined) {
    const started = new Worker(new URL('./pdfWorker.ts', import.meta.url))
    started.on('message', (answer: PdfAnswer) => settle(answer, started))
    started.on('error', (error) => abandon(started, error))
    started.on('exit', (code) => abandon(started, new Error(`the thread that sets pages ended with ${code}`)))
    worker = started
  }
  worker.ref()
  return worker
}

const called: Readonly<Record<PdfPage, string>> = { report: 'report', runSheet: 'run sheet' }

function settle(answer: PdfAnswer, from: Worker): void {
  const task = waiting.get(answer.id)
  waiting.delete(answer.id)
  if (waiting.size === 0) from.unref()
  if (task === undefined) return
  if ('pdf' in answer) task.resolve(answer.pdf)
  else task.reject(new Error(`the ${called[task.page]} cannot be set: ${answer.error}`))
}

/** Whoever still waits hears why; the next one starts a new thread. */
function abandon(from: Worker, error: Error): void {
  if (worker !== from) return
  worker = undefined
  for (const { reject } of waiting.values()) reject(error)
  waiting.clear()
}
