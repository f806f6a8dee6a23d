// How fast tables are read, and in how much memory. Each reading is a process of its own, so that its peak is its own.
// node bench/readTable.ts --rows 1000000 --rounds 3

import { spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { type Random, randomFrom } from '../src/core/numeric/index.ts'

interface Kind {
  readonly name: string
  readonly digits: number
  /** Makes a line in the kind's dialect of cells with points. */
  line(cells: readonly string[]): string
}

const kinds: readonly Kind[] = [
  { name: 'commas, 7 digits', digits: 7, line: (cells) => cells.join(',') },
  { name: 'semicolons, decimal commas', digits: 7, line: (cells) => cells.join(';').replaceAll('.', ',') },
  { name: 'in quotation marks', digits: 7, line: (cells) => cells.map((cell) => `"${cell}"`).join(',') },
  { name: 'aligned by blanks', digits: 7, line: (cells) => cells.map((cell) => cell.padStart(15)).join('') },
  { name: 'commas, 17 digits', digits: 17, line: (cells) => cells.join(',') },
]

const headings = ['Step', 'Time', 'Angular_velocity', 'Torque', 'Axial_force', 'Gap', 'Temperature']
const units = ['-', 's', 'rad/s', 'Nm', 'N', 'm', '°C']

/** An invented record: 20 steps, 100 rows a second. */
async function write(path: string, kind: Kind, rows: number): Promise<void> {
  const random = randomFrom(1)
  const file = createWriteStream(path)
  file.write(`${kind.line(headings)}\n${kind.line(units)}\n`)
  const perStep = Math.ceil(rows / 20)
  for (let from = 0; from < rows; from += 10_000) {
    const lines: string[] = []
    for (let row = from; row < Math.min(rows, from + 10_000); row++)
      lines.push(kind.line(cellsOf(row, { perStep, random, digits: kind.digits })))
    if (!file.write(`${lines.join('\n')}\n`)) await once(file, 'drain')
  }
  file.end()
  await once(file, 'finish')
}

function cellsOf(
  row: number,
  how: { readonly perStep: number; readonly random: Random; readonly digits: number },
): string[] {
  const { perStep, random, digits } = how
  const step = 1 + Math.floor(row / perStep)
  const noise = (size: number): number => size * (random.uniform() - 0.5)
  const values = [step * 0.5 + noise(1e-3), 0.02 / step + noise(1e-4), 5 + noise(0.02), noise(1e-6), 25 + noise(0.1)]
  return [String(step), String((row + 1) / 100), ...values.map((value) => String(Number(value.toPrecision(digits))))]
}

const child = `
const { readRecord } = await import(process.argv[2])
const started = performance.now()
const outcome = await readRecord(process.argv[1])
if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
const { user, system } = process.cpuUsage()
console.log(JSON.stringify({ rows: outcome.value.rows, ms: performance.now() - started, cpu: (user + system) / 1000, peak: process.resourceUsage().maxRSS / 1024 }))
`

interface Run {
  readonly rows: number
  readonly ms: number
  /** Processor time of the whole process, its start among it. */
  readonly cpu: number
  readonly peak: number
}

function read(path: string): Run {
  const reader = new URL('../src/io/index.ts', import.meta.url).href
  const { stdout, stderr, status } = spawnSync(process.execPath, ['--input-type=module', '-e', child, path, reader], {
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(stderr)
  const run: Run = JSON.parse(stdout)
  return run
}

const { values } = parseArgs({
  options: { rows: { type: 'string', default: '1000000' }, rounds: { type: 'string', default: '3' } },
})
const [rows, rounds] = [Number(values.rows), Number(values.rounds)]
const folder = mkdtempSync(join(tmpdir(), 'kufe-bench-'))
process.stdout.write(`${rows} rows of ${headings.length} columns; best of ${rounds}\n`)
process.stdout.write('dialect                          MB     ms   MB/s  processor ms  peak MiB\n')
try {
  for (const kind of kinds) {
    const path = join(folder, 'run.txt')
    await write(path, kind, rows)
    const size = statSync(path).size / 1e6
    const runs = Array.from({ length: rounds }, () => read(path)).sort((a, b) => a.ms - b.ms)
    if (runs[0].rows !== rows) throw new Error(`${runs[0].rows} rows were read`)
    const [{ ms, cpu, peak }] = runs
    const cells = [size.toFixed(0), ms.toFixed(0), (size / (ms / 1000)).toFixed(0), cpu.toFixed(0), peak.toFixed(0)]
    const [a, b, c, d, e] = cells
    process.stdout.write(
      `${kind.name.padEnd(28)} ${a.padStart(6)} ${b.padStart(6)} ${c.padStart(6)} ${d.padStart(13)} ${e.padStart(9)}\n`,
    )
    rmSync(path)
  }
} finally {
  rmSync(folder, { recursive: true })
}
