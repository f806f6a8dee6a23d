// How fast a lab is with invented records of 2,000 rows: node bench/lab.ts [RECORDS] [THREADS]; one core: taskset -c 0 node …

import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { simulate } from '../src/bench/index.ts'
import { type AddEvent, addRecords, makeLab, verifyLab } from '../src/bench/lab/index.ts'
import type { Outcome, Outside } from '../src/core/terms/index.ts'

const count = Number(process.argv[2] ?? 1000)
const threads = Number(process.argv[3] ?? 1)
/** Kept between runs, as making the records takes longer than all the rest. */
const stock = join(tmpdir(), `kufe-bench-stock-${process.getuid?.() ?? 0}`)

const say = (text: string): boolean => process.stdout.write(`${text}\n`)

const outside: Outside = {
  now: () => new Date(),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe bench',
}

function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(JSON.stringify(outcome.problems))
}

/** Wall and processor time since the last call, for each of the records. */
function stopwatch(): (what: string, of?: number) => void {
  let wall = performance.now()
  let processor = process.cpuUsage()
  return (what, of = count) => {
    const { user, system } = process.cpuUsage(processor)
    const seconds = (performance.now() - wall) / 1000
    const each = ((user + system) / 1000 / of).toFixed(2)
    say(
      `${what.padEnd(28)} ${seconds.toFixed(2).padStart(7)} s   ${(of / seconds).toFixed(0).padStart(5)} a second   ${each.padStart(6)} ms of processor each`,
    )
    wall = performance.now()
    processor = process.cpuUsage()
  }
}

function makeStock(): void {
  mkdirSync(stock, { recursive: true })
  for (let seed = 1; seed <= count; seed++) {
    const name = `wax-${String(seed).padStart(5, '0')}`
    if (existsSync(join(stock, `${name}.csv`))) continue
    value(
      simulate(
        { runFile: 'examples/lacquer/wax.run.yaml', folder: stock, name, seed, rows: 2000, force: true },
        outside,
      ),
    )
  }
}

makeStock()
const folder = mkdtempSync(join(tmpdir(), 'kufe-bench-'))
try {
  const call = { place: join(folder, 'lab'), who: 'MK', why: 'how fast?' }
  value(await makeLab(call, 'bench', outside))
  const files = Array.from({ length: count }, (_, i) => join(stock, `wax-${String(i + 1).padStart(5, '0')}.csv`))
  const words = { names: {}, facts: {}, reading: { units: [], columns: [], mappings: '' }, options: {}, threads }
  const setup = join(stock, 'wax-00001.setup.yaml')
  const lap = stopwatch()
  let kept = 0
  let reduced = 0
  const onAdd = ({ what }: AddEvent): void => {
    if (what === 'kept' && ++kept === count) lap('kept')
    if (what === 'reduced') reduced++
  }
  value(await addRecords({ ...words, paths: files, setup }, call, { outside, onAdd }))
  lap(`reduced and fitted, ${threads} threads`)
  if (reduced !== count) throw new Error(`${reduced} of ${count} were reduced`)
  value(await addRecords({ ...words, paths: files, setup }, call, { outside, onAdd }))
  lap('added again, all known')
  const seen = value(await verifyLab({ word: undefined, keep: false, threads }, call, outside))
  lap(`verified, ${threads} threads`)
  if (seen.same !== count || seen.findings.length > 0) throw new Error(`${seen.same} of ${count} came out again`)
} finally {
  rmSync(folder, { recursive: true, force: true })
}
