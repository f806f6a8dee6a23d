import { Worker } from 'node:worker_threads'
import type { Outcome } from '../../core/terms/index.ts'
import type { ComputedResult, ComputeTask } from './computeResult.ts'

/** What a thread answers: a result or its problems, or a mistake of ours. */
export type ThreadAnswer =
  | { readonly number: number; readonly outcome: Outcome<ComputedResult> }
  | { readonly number: number; readonly fault: Error }

interface Waiting {
  readonly resolve: (outcome: Outcome<ComputedResult>) => void
  readonly reject: (error: Error) => void
}

/** A thread of its own that computes one result after the other. */
export class ComputeThread {
  readonly #worker = new Worker(new URL('./computeWorker.ts', import.meta.url))
  readonly #waiting = new Map<number, Waiting>()
  #count = 0

  constructor() {
    this.#worker.on('message', (answer: ThreadAnswer) => {
      const waiting = this.#waiting.get(answer.number)
      this.#waiting.delete(answer.number)
      if ('outcome' in answer) waiting?.resolve(answer.outcome)
      else waiting?.reject(answer.fault)
    })
    this.#worker.on('error', (error) => this.#giveUp(error instanceof Error ? error : new Error(String(error))))
    this.#worker.on('exit', () => this.#giveUp(new Error('a thread that computes results has ended')))
  }

  /** Tasks that it has not answered yet. */
  get waiting(): number {
    return this.#waiting.size
  }

  compute(task: ComputeTask): Promise<Outcome<ComputedResult>> {
    const number = this.#count++
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { resolve, reject })
      this.#worker.postMessage({ number, task })
    })
  }

  async close(): Promise<void> {
    await this.#worker.terminate()
  }

  #giveUp(error: Error): void {
    for (const { reject } of this.#waiting.values()) reject(error)
    this.#waiting.clear()
  }
}
