import { Worker } from 'node:worker_threads'
import { type TaskEnd, type TaskOptions, type TaskOrder, type TaskSaid, taskStates } from './taskTalk.ts'

/** How long a task that was stopped may take to notice by itself, ms. */
const patience = 300

/** One thread that does one task after the other. */
export class TaskThread {
  readonly #worker = new Worker(new URL('./taskWorker.ts', import.meta.url))
  #busyWith: 'nothing' | 'job' | 'quick' = 'nothing'
  #ended = false
  #end: ((error: Error | undefined) => void) | undefined
  #hear: ((said: TaskSaid) => void) | undefined

  constructor() {
    this.#worker.on('message', (said: TaskSaid) => this.#hear?.(said))
    this.#worker.on('error', (error) => this.#over(error instanceof Error ? error : new Error(String(error))))
    this.#worker.on('exit', () => this.#over(new Error('a thread of the server has ended')))
    this.#worker.unref()
  }

  get busyWith(): 'nothing' | 'job' | 'quick' {
    return this.#busyWith
  }

  get isEnded(): boolean {
    return this.#ended
  }

  run(order: TaskOrder, { quick, progress, stop }: TaskOptions): Promise<TaskEnd<unknown>> {
    this.#busyWith = quick ? 'quick' : 'job'
    this.#worker.ref()
    const { promise, resolve, reject } = Promise.withResolvers<TaskEnd<unknown>>()
    const halt = (): void => {
      const flag = new Int32Array(order.state)
      const was = Atomics.compareExchange(flag, 0, taskStates.running, taskStates.stopped)
      if (was === taskStates.keeping) return // too late: it is being kept whole
      setTimeout(() => void this.#worker.terminate(), patience).unref()
      resolve({ stopped: true })
      this.#ended = true // the thread may be in the midst of something; it gets no other task
    }
    stop?.addEventListener('abort', halt, { once: true })
    if (stop?.aborted) halt()
    this.#end = (error) => (error === undefined ? resolve({ stopped: true }) : reject(error))
    this.#hear = (said) => {
      if (said.number !== order.number) return
      if ('progress' in said) progress?.(said.progress.doing, said.progress.done, said.progress.of)
      else if ('fault' in said) reject(new Error(said.fault))
      else resolve({ stopped: false, outcome: said.outcome })
    }
    this.#worker.postMessage(order)
    return promise.finally(() => {
      stop?.removeEventListener('abort', halt)
      this.#end = undefined
      this.#busyWith = 'nothing'
      this.#worker.unref()
    })
  }

  /** Ends the thread; a task that it is at counts as stopped. */
  async close(): Promise<void> {
    this.#over(undefined)
    await this.#worker.terminate()
  }

  #over(error: Error | undefined): void {
    this.#ended = true
    this.#end?.(error)
  }
}
