import { parentPort } from 'node:worker_threads'
import type { Outside } from '../../core/terms/index.ts'
import { tasks } from './tasks.ts'
import { type TaskDesk, type TaskOrder, type TaskSaid, type TaskTable, taskStates } from './taskTalk.ts'

const say = (said: TaskSaid): void => parentPort?.postMessage(said)

/** Progress is told no more often than people can follow. */
const tellEvery = 80

parentPort?.on('message', async (order: TaskOrder) => {
  const { number, name, args } = order
  try {
    const table: TaskTable = tasks
    // The pool names tasks of this table only, each with its own arguments.
    say({ number, outcome: await table[name](args as never, deskOf(order)) })
  } catch (error) {
    say({ number, fault: error instanceof Error ? (error.stack ?? error.message) : String(error) })
  }
})

function deskOf({ number, call, program, state }: TaskOrder): TaskDesk {
  const flag = new Int32Array(state)
  let told = Number.NEGATIVE_INFINITY
  const outside: Outside = {
    now: () => new Date(),
    program,
    progress: (doing, done, of) => {
      const now = performance.now()
      if (now - told < tellEvery && done < of) return
      told = now
      say({ number, progress: { doing, done, of } })
    },
    stop: {
      get aborted() {
        return Atomics.load(flag, 0) === taskStates.stopped
      },
    },
  }
  const mayKeep = (): boolean =>
    Atomics.compareExchange(flag, 0, taskStates.running, taskStates.keeping) !== taskStates.stopped
  return { call, outside, mayKeep }
}
