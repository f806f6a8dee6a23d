import type { Outcome } from '../../core/terms/index.ts'
import { type ComputedResult, type ComputeTask, computeResult } from './computeResult.ts'
import { ComputeThread } from './computeThread.ts'

/** Whoever computes results. What goes in decides what comes out, not who does it. */
export interface Computing {
  /** How many tasks it takes at once. */
  readonly width: number
  compute(task: ComputeTask): Promise<Outcome<ComputedResult>>
  close(): Promise<void>
}

/** A thread takes some tenths of a second to load the program; fewer tasks than this are done here. */
const worthThreads = 12

/** Computes in `threads` threads beside this one, or right here where that is none or there is little to do. */
export function computing(tasks: number, threads: number): Computing {
  if (threads === 0 || tasks < worthThreads) return { width: 1, compute: computeResult, close: async () => {} }
  const all = Array.from({ length: Math.min(threads, tasks) }, () => new ComputeThread())
  return {
    width: 2 * all.length, // so that no thread waits for the next task
    compute: (task) => all.reduce((idle, one) => (one.waiting < idle.waiting ? one : idle)).compute(task),
    close: async () => void (await Promise.all(all.map((one) => one.close()))),
  }
}
