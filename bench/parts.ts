// Where the time of `kufe reduce` goes: node bench/parts.ts RECORD SETUP

import { readFileSync } from 'node:fs'
import { enableCompileCache } from 'node:module'

// As bin/kufe.mjs does, so that loading costs here what it costs there.
enableCompileCache()

interface Clock {
  readonly wall: number
  readonly processor: NodeJS.CpuUsage
}

const now = (): Clock => ({ wall: performance.now(), processor: process.cpuUsage() })
const say = (cells: readonly string[]): boolean =>
  process.stdout.write(
    `${cells[0].padEnd(24)}${cells
      .slice(1)
      .map((cell) => cell.padStart(14))
      .join('')}\n`,
  )

function told(part: string, began: Clock): Clock {
  const { user, system } = process.cpuUsage(began.processor)
  const peak = process.resourceUsage().maxRSS / 1024
  const milliseconds = [performance.now() - began.wall, (user + system) / 1000]
  say([part, ...[...milliseconds, peak].map((figure) => figure.toFixed(0))])
  return now()
}

const [file, setupFile] = process.argv.slice(2)
say(['part', 'ms', 'processor ms', 'peak MiB'])
let clock = now()
const { readRecord, readSetup } = await import('../src/io/index.ts')
const { reduceRecord } = await import('../src/core/reduce/index.ts')
const { fitCurve } = await import('../src/core/curve/index.ts')
const { curvePoints } = await import('../src/bench/curvePoints.ts')
clock = told('loading the program', clock)
const setup = readSetup(readFileSync(setupFile, 'utf8'), setupFile)
if (!setup.ok) throw new Error(setup.problems.map(({ what }) => what).join(' '))
clock = told('reading the setup', clock)
const record = await readRecord(file)
if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join(' '))
clock = told('reading the record', clock)
const reduction = reduceRecord(record.value.channels, setup.value.setup)
if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
clock = told('reducing', clock)
fitCurve(curvePoints(reduction.value.points), { draws: 1000, seed: 1 })
told('curve and its band', clock)
record.value.close()
