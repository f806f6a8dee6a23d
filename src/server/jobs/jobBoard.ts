import { randomBytes } from 'node:crypto'
import type { Outcome, Problem, Progress } from '../../core/terms/index.ts'
import { problemDetailsOf } from '../answer/problemAnswer.ts'
import type { Job, JobDone } from '../contract/index.ts'
import type { TaskEnd } from '../threads/taskTalk.ts'

/** What a job does: it tells how far it is, and stops when it is asked to. */
export type JobWork = (progress: Progress, stop: AbortSignal) => Promise<TaskEnd<JobDone>>

/** Told of everything that happens to a job. */
export type JobListener = (job: Job) => void

interface Pinned {
  job: Job
  readonly stop: AbortController
  readonly listeners: Set<JobListener>
  readonly ended: Promise<void>
}

/** Ended jobs that are remembered, so that a page that was away learns what became of them. */
const mostEnded = 500

/** The jobs of this server. They live as long as it does; what they keep is in the lab. */
export class JobBoard {
  readonly #pinned = new Map<string, Pinned>()
  readonly #onFault: (error: unknown) => void

  constructor(onFault: (error: unknown) => void) {
    this.#onFault = onFault
  }

  /** Begins a job and gives its id. */
  begin(what: string, work: JobWork): string {
    const id = randomBytes(16).toString('hex')
    const stop = new AbortController()
    const { promise: ended, resolve } = Promise.withResolvers<void>()
    const job: Job = { job: id, what, state: 'running', progress: null, done: null, problem: null }
    const pinned: Pinned = { job, stop, listeners: new Set(), ended }
    this.#pinned.set(id, pinned)
    this.#forgetOld()
    void this.#run(pinned, work).finally(resolve)
    return id
  }

  get(id: string): Job | undefined {
    return this.#pinned.get(id)?.job
  }

  /** Id of the job that does this just now. */
  running(what: string): string | undefined {
    return [...this.#pinned.values()].find(({ job }) => job.state === 'running' && job.what === what)?.job.job
  }

  /** Calls back with the job as it stands and at each change; gives what ends that. */
  listen(id: string, listener: JobListener): (() => void) | undefined {
    const pinned = this.#pinned.get(id)
    if (pinned === undefined) return undefined
    pinned.listeners.add(listener)
    listener(pinned.job)
    return () => void pinned.listeners.delete(listener)
  }

  /** Asks a job to stop; false where there is none. */
  stop(id: string): boolean {
    this.#pinned.get(id)?.stop.abort()
    return this.#pinned.has(id)
  }

  /** Waits until all have ended, having asked them to. */
  async close(): Promise<void> {
    for (const { stop } of this.#pinned.values()) stop.abort()
    await Promise.all([...this.#pinned.values()].map(({ ended }) => ended))
  }

  async #run(pinned: Pinned, work: JobWork): Promise<void> {
    const progress: Progress = (doing, done, of) => this.#put(pinned, { progress: { doing, done, of } })
    progress('waiting', 0, 1)
    try {
      const end = await work(progress, pinned.stop.signal)
      if (end.stopped) this.#put(pinned, { state: 'stopped' })
      else this.#put(pinned, ended(end.outcome))
    } catch (error) {
      this.#onFault(error)
      this.#put(pinned, ended({ ok: false, problems: [faultProblem] }))
    }
  }

  #put(pinned: Pinned, change: Partial<Job>): void {
    pinned.job = { ...pinned.job, ...change }
    for (const listener of pinned.listeners) listener(pinned.job)
  }

  #forgetOld(): void {
    const over = [...this.#pinned.values()].filter(({ job }) => job.state !== 'running')
    for (const { job } of over.slice(0, Math.max(0, over.length - mostEnded))) this.#pinned.delete(job.job)
  }
}

const ended = (outcome: Outcome<JobDone>): Partial<Job> =>
  outcome.ok ? { state: 'done', done: outcome.value } : { state: 'failed', problem: problemDetailsOf(outcome.problems) }

/** A mistake of ours. What it was stands on standard error. */
export const faultProblem: Problem = {
  kind: 'fault',
  class: 'store',
  place: {},
  what: 'The program made a mistake.',
  mend: 'Try once more; what was kept before is safe. The terminal in which it runs says more.',
}
