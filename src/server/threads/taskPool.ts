import type { LabCall } from '../../bench/lab/index.ts'
import { failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import type { tasks } from './tasks.ts'
import type { TaskEnd, TaskOptions, TaskOrder } from './taskTalk.ts'
import { TaskThread } from './taskThread.ts'

type Table = typeof tasks
/** Name of a task. */
export type TaskName = keyof Table
type ArgsOf<N extends TaskName> = Parameters<Table[N]>[0]
type ValueOf<N extends TaskName> = Awaited<ReturnType<Table[N]>> extends Outcome<infer T> ? T : never

interface Waiting {
  readonly order: TaskOrder
  readonly options: TaskOptions
  readonly resolve: (end: TaskEnd<unknown>) => void
  readonly reject: (error: Error) => void
}

/** Threads that do what takes long, so that the one that answers is free. They are started when there is work. */
export class TaskPool {
  readonly #call: LabCall
  readonly #program: string
  readonly #most: number
  readonly #threads = new Set<TaskThread>()
  readonly #waiting: Waiting[] = []
  #count = 0
  #closed = false

  /** @param threads for jobs; one more is there for what is quick */
  constructor(call: LabCall, { program, threads }: { readonly program: string; readonly threads: number }) {
    this.#call = call
    this.#program = program
    this.#most = threads + 1
  }

  run<N extends TaskName>(name: N, args: ArgsOf<N>, options: TaskOptions = {}): Promise<TaskEnd<ValueOf<N>>> {
    const { promise, resolve, reject } = Promise.withResolvers<TaskEnd<unknown>>()
    const order: TaskOrder = {
      ...{ number: this.#count++, name, args, program: this.#program },
      call: { ...this.#call, ...options.by },
      state: new SharedArrayBuffer(4),
    }
    const waiting = { order, options, resolve, reject }
    if (options.quick) this.#waiting.unshift(waiting)
    else this.#waiting.push(waiting)
    options.stop?.addEventListener('abort', () => this.#forget(waiting), { once: true })
    this.#next()
    return promise as Promise<TaskEnd<ValueOf<N>>> // the table says what each task gives
  }

  /** Runs what somebody waits for at the screen: before all jobs, in a thread that no job takes. */
  async quickly<N extends TaskName>(name: N, args: ArgsOf<N>): Promise<Outcome<ValueOf<N>>> {
    const end = await this.run(name, args, { quick: true })
    return end.stopped ? failed(closing) : end.outcome
  }

  /** Ends all threads at once; what they were at keeps nothing or all. */
  async close(): Promise<void> {
    this.#closed = true
    for (const { resolve } of this.#waiting.splice(0)) resolve({ stopped: true })
    await Promise.all([...this.#threads].map((thread) => thread.close()))
  }

  #forget(waiting: Waiting): void {
    const at = this.#waiting.indexOf(waiting)
    if (at < 0) return
    this.#waiting.splice(at, 1)
    waiting.resolve({ stopped: true })
  }

  #next(): void {
    for (;;) {
      const jobs = [...this.#threads].filter((thread) => thread.busyWith === 'job').length
      const at = this.#waiting.findIndex(({ options }) => options.quick || jobs < this.#most - 1)
      if (at < 0 || this.#closed) return
      const idle = [...this.#threads].find((thread) => thread.busyWith === 'nothing')
      if (idle === undefined && this.#threads.size >= this.#most) return
      const [waiting] = this.#waiting.splice(at, 1)
      void this.#give(idle ?? this.#hire(), waiting)
    }
  }

  #hire(): TaskThread {
    const thread = new TaskThread()
    this.#threads.add(thread)
    return thread
  }

  async #give(thread: TaskThread, { order, options, resolve, reject }: Waiting): Promise<void> {
    try {
      resolve(await thread.run(order, options))
    } catch (error) {
      reject(error instanceof Error ? error : new Error(String(error)))
    } finally {
      if (thread.isEnded) this.#threads.delete(thread)
      this.#next()
    }
  }
}

const closing: Problem = {
  kind: 'labBusy',
  class: 'store',
  place: {},
  what: 'The server is closing.',
  mend: 'Ask again when it is open.',
}
