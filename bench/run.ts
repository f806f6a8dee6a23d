// A record to a friction curve with its band, side by side with what somebody writes with pandas and scipy:
// npm run speed -- --rows 1000000 --long 10000000 --rounds 7

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { measure, medianOf, pythonWith, type Taken } from './measure.ts'

/** What Kufe may take of the peer's time and memory, and of memory for the long record in bytes. */
const bars = { time: 0.4, memory: 0.5, long: 300e6 }

/** Same steps, and friction that differs by no more than the ripple of a turn that was not completed. */
const sameJob = 0.03

const { values } = parseArgs({
  options: {
    rows: { type: 'string', default: '1000000' },
    long: { type: 'string', default: '10000000' },
    rounds: { type: 'string', default: '7' },
  },
})
const rounds = Number(values.rounds)
const here = import.meta.dirname
const kufe = join(here, '..', 'bin', 'kufe.mjs')
const say = (text: string): boolean => process.stdout.write(`${text}\n`)

interface Made {
  readonly record: string
  readonly setup: string
}

function make(folder: string, name: string, rows: string): Made {
  const run = join(here, 'long.run.yaml')
  const words = [kufe, 'simulate', run, '--rows', rows, '--name', name, '--out', folder]
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  const stem = join(folder, name)
  say(`${rows} rows, ${(statSync(`${stem}.csv`).size / 1e6).toFixed(0)} MB`)
  return { record: `${stem}.csv`, setup: `${stem}.setup.yaml` }
}

const ours = ({ record, setup }: Made): readonly string[] => [
  process.execPath,
  kufe,
  'reduce',
  record,
  '--setup',
  setup,
  '--json',
]

function row(name: string, { seconds, processor, peak }: Taken): void {
  const cells = [seconds.toFixed(2), processor.toFixed(2), (peak / 1e6).toFixed(0)]
  say(`  ${name.padEnd(18)}${cells.map((cell) => cell.padStart(14)).join('')}`)
}

/** Says whether a figure stays under its bar. */
function bar(what: string, seen: number, allowed: number): boolean {
  const kept = seen <= allowed
  say(`${kept ? 'ok    ' : 'MISSED'} ${what}: ${seen.toFixed(2)}, allowed ${allowed}`)
  return kept
}

/** Runs both in turn, so that a busy machine slows both. */
function sideBySide(python: string, made: Made, folder: string): boolean {
  const peer = [python, join(here, 'peer', 'reduce.py'), made.record, '0.015', '1000']
  const files = { ours: join(folder, 'ours.json'), peer: join(folder, 'peer.json') }
  // The first start fills the cache of compiled code; the peer's first one that of its libraries.
  measure(python, ours(made), files.ours)
  measure(python, peer, files.peer)
  compare(files)
  const runs: { ours: Taken[]; peer: Taken[] } = { ours: [], peer: [] }
  for (let round = 0; round < rounds; round++) {
    runs.ours.push(measure(python, ours(made), files.ours))
    runs.peer.push(measure(python, peer, files.peer))
  }
  const [own, other] = [medianOf(runs.ours), medianOf(runs.peer)]
  say(`  medians of ${String(rounds).padEnd(8)}    seconds     processor s       peak MB`)
  row('kufe reduce', own)
  row('pandas and scipy', other)
  const kept = [
    bar('time over the peer', own.seconds / other.seconds, bars.time),
    bar('memory over the peer', own.peak / other.peak, bars.memory),
  ]
  return kept.every(Boolean)
}

interface Answer {
  readonly points: readonly { readonly friction: number | null }[]
}

function compare(files: { readonly ours: string; readonly peer: string }): void {
  const [own, peer] = [files.ours, files.peer].map((file): Answer => JSON.parse(readFileSync(file, 'utf8')))
  if (own.points.length !== peer.points.length) {
    throw new Error(`${own.points.length} points against the peer's ${peer.points.length}`)
  }
  own.points.forEach(({ friction }, i) => {
    const other = peer.points[i].friction ?? Number.NaN
    if (Math.abs((friction ?? Number.NaN) / other - 1) < sameJob) return
    throw new Error(`point ${i + 1}: friction ${friction} against the peer's ${other}`)
  })
}

function longRecord(python: string, made: Made, folder: string): boolean {
  const taken = measure(python, ours(made), join(folder, 'long.json'))
  say('                           seconds   processor s       peak MB')
  row('kufe reduce', taken)
  return bar('peak MB', taken.peak / 1e6, bars.long / 1e6)
}

function parts(made: Made): void {
  const { stdout, stderr, status } = spawnSync(process.execPath, [join(here, 'parts.ts'), made.record, made.setup], {
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(stderr)
  say(stdout.trimEnd().replaceAll(/^/gm, '  '))
}

function bench(python: string): boolean {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-bench-'))
  const kept: boolean[] = []
  try {
    say(`${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores; Node ${process.versions.node}`)
    const record = make(folder, 'record', values.rows)
    const peer = pythonWith(['numpy', 'pandas', 'scipy'])
    if (peer === undefined) say('Not held against the peer: no Python with pandas and scipy was found.')
    else kept.push(sideBySide(peer, record, folder))
    parts(record)
    rmSync(record.record)
    const long = make(folder, 'long', values.long)
    kept.push(longRecord(python, long, folder))
    parts(long)
  } finally {
    rmSync(folder, { recursive: true })
  }
  return kept.every(Boolean)
}

const python = pythonWith([])
if (python === undefined) say('Skipped: no Python was found, and it is what measures the processes.')
else if (!bench(python)) process.exitCode = 1
