import { parentPort, workerData } from 'node:worker_threads'
import type { CoverageShare } from './coverageStudy.ts'
import { coverRun } from './coverRun.ts'

const { seed, first, step, curves } = workerData as CoverageShare

for (let index = first; index < curves; index += step) parentPort?.postMessage(coverRun(seed, index))
