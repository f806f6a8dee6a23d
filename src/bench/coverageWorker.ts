import { parentPort, workerData } from 'node:worker_threads'
import { coverageKind } from './coverageKinds.ts'
import type { CoverageShare } from './coverageStudy.ts'

const { of, seed, first, step, curves } = workerData as CoverageShare

for (let index = first; index < curves; index += step) parentPort?.postMessage(coverageKind(of).cover(seed, index))
