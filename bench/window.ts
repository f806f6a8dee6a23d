// How fast the window of a plan is worked out, 200 speeds × 200 loads with film and contact, beside the same in numpy.
// node bench/window.ts --cells 200 --rounds 60

import { spawnSync } from 'node:child_process'
import { parseArgs } from 'node:util'
import { logAxis, type PlanQuestion, planBasis, planWindow } from '../src/core/plan/index.ts'
import { oatQuestion } from '../test/core/plan/questions.ts'

/** Most that a whole window may take, so that it can follow a slider. */
const limitMilliseconds = 8

const { values } = parseArgs({
  options: { cells: { type: 'string', default: '200' }, rounds: { type: 'string', default: '60' } },
})
const cells = Number(values.cells)
const rounds = Number(values.rounds)

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1]

// Invented: a drink that thins between two plateaus, so that each film is its own inlet's.
const thinning: PlanQuestion = {
  ...oatQuestion,
  flow: {
    law: 'cross',
    parameters: { restViscosity: 0.5, fastViscosity: 3.5e-3, time: 0.5, exponent: 0.75 },
    shearRate: { low: 0.1, high: 1000 },
    source: 'invented',
  },
}

function ours(question: PlanQuestion): { readonly milliseconds: number; readonly free: number } {
  const axes = { speeds: logAxis(1e-5, 1, cells), forces: logAxis(0.05, 20, cells) }
  const times: number[] = []
  let free = 0
  for (let round = 0; round < rounds + 10; round++) {
    const started = performance.now()
    const { broken } = planWindow(planBasis(question), axes)
    if (round >= 10) times.push(performance.now() - started)
    free = broken.filter((mask) => mask === 0).length
  }
  return { milliseconds: median(times), free }
}

const say = (text: string): boolean => process.stdout.write(`${text}\n`)
const plain = ours(oatQuestion)
const thinned = ours(thinning)
for (const [name, { milliseconds, free }] of [
  ['ours', plain],
  ['thins', thinned],
] as const) {
  say(
    `${name.padEnd(6)} ${milliseconds.toFixed(2).padStart(6)} ms  ${cells} × ${cells} cells, ${free} measurable (median of ${rounds})`,
  )
}
const python = spawnSync('python3', [new URL('./window.py', import.meta.url).pathname, String(cells), String(rounds)], {
  encoding: 'utf8',
  env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
})
const skipped = 'numpy  skipped: this machine has no Python with numpy'
say(python.status === 0 ? `numpy  ${python.stdout.trim()}` : skipped)
if (Math.max(plain.milliseconds, thinned.milliseconds) > limitMilliseconds) {
  say(`A window takes longer than ${limitMilliseconds} ms.`)
  process.exitCode = 1
}
