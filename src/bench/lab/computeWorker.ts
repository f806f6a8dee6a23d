import { parentPort } from 'node:worker_threads'
import { type ComputeTask, computeResult } from './computeResult.ts'
import type { ThreadAnswer } from './computeThread.ts'

const answer = (said: ThreadAnswer): void => parentPort?.postMessage(said)

parentPort?.on('message', async ({ number, task }: { readonly number: number; readonly task: ComputeTask }) => {
  try {
    answer({ number, outcome: await computeResult(task) })
  } catch (error) {
    answer({ number, fault: error instanceof Error ? error : new Error(String(error)) })
  }
})
