// Reads thousands of damaged tables and checks that each ends soon, in a record or in problems that help.
// node scripts/fuzzTables.ts --count 10000 --seed 1

import { parseArgs } from 'node:util'
import { randomFrom } from '../src/core/numeric/index.ts'
import type { Outcome, Problem } from '../src/core/terms/index.ts'
import { type RawRecord, readRecord, tableProblemKinds } from '../src/io/index.ts'
import { drawFrom, mutations } from './mutateBytes.ts'
import { type SeedTable, seedTables } from './seedTables.ts'

/** No file of this size may take longer. */
const longestSeconds = 2
/** A file may grow so far by mutation. */
const largest = 8_000_000

export interface FuzzCase {
  readonly number: number
  readonly name: string
  readonly bytes: Uint8Array
}

export interface FuzzReport {
  readonly cases: number
  readonly read: number
  readonly readWithRemarks: number
  /** Files by the first problem that they were refused for. */
  readonly refused: Readonly<Record<string, number>>
  /** Problems of all files by kind. */
  readonly problems: Readonly<Record<string, number>>
  readonly slowest: readonly { readonly milliseconds: number; readonly what: string }[]
  /** What must not be: crashes, slow cases, problems without place or mend. Empty when all is well. */
  readonly faults: readonly string[]
}

/** The case with a number; the same number and seed make the same bytes. */
export function fuzzCase(seeds: readonly SeedTable[], number: number, seed: number): FuzzCase {
  const draw = drawFrom(randomFrom(seed, number))
  const start = seeds[draw(seeds.length)]
  let bytes = start.bytes
  const done: string[] = []
  const names = Object.keys(mutations)
  for (let left = draw(2) === 0 ? 1 : 1 + draw(3); left > 0; left--) {
    const name = names[draw(names.length)]
    const mutated = mutations[name](bytes, draw)
    if (mutated.length > largest) continue
    bytes = mutated
    done.push(name)
  }
  return { number, name: `${start.name}: ${done.join(', ')}`, bytes }
}

export async function fuzz(
  options: { readonly count: number; readonly seed: number },
  progress: (done: number) => void = () => {},
): Promise<FuzzReport> {
  const seeds = seedTables()
  const refused: Record<string, number> = {}
  const problems: Record<string, number> = {}
  const faults: string[] = []
  let slowest: FuzzReport['slowest'] = []
  let read = 0
  let readWithRemarks = 0
  for (let number = 0; number < options.count; number++) {
    const one = fuzzCase(seeds, number, options.seed)
    const started = performance.now()
    const outcome = await attempt(one)
    const milliseconds = performance.now() - started
    const what = `case ${number}, ${one.name}, ${one.bytes.length} bytes`
    if (!(milliseconds < 1000 * longestSeconds)) faults.push(`${what}: took ${Math.round(milliseconds)} ms`)
    if (milliseconds > (slowest.at(-1)?.milliseconds ?? 0) || slowest.length < 5) {
      slowest = [...slowest, { milliseconds, what }].sort((a, b) => b.milliseconds - a.milliseconds).slice(0, 5)
    }
    if (typeof outcome === 'string') faults.push(`${what}: ${outcome}`)
    else if (outcome.ok) {
      read++
      if (outcome.value.remarks.length > 0) readWithRemarks++
      faults.push(...recordFaults(outcome.value).map((fault) => `${what}: ${fault}`))
      outcome.value.close()
    } else {
      refused[outcome.problems[0].kind] = (refused[outcome.problems[0].kind] ?? 0) + 1
      for (const { kind } of outcome.problems) problems[kind] = (problems[kind] ?? 0) + 1
      faults.push(...outcome.problems.flatMap(problemFaults).map((fault) => `${what}: ${fault}`))
    }
    progress(number + 1)
  }
  return { cases: options.count, read, readWithRemarks, refused, problems, slowest, faults }
}

async function attempt(one: FuzzCase): Promise<Outcome<RawRecord> | string> {
  try {
    return await readRecord(one.bytes, { file: 'damaged.csv', spillAbove: one.number % 7 === 0 ? 0 : undefined })
  } catch (error) {
    return error instanceof Error ? `threw ${error.stack ?? error.message}` : `threw ${String(error)}`
  }
}

/** What is wrong with a problem as such. */
function problemFaults(problem: Problem): string[] {
  const faults: string[] = []
  const { kind, place, what, mend } = problem
  if (!tableProblemKinds.some((known) => known === kind)) faults.push(`the kind ${kind} is not listed`)
  if (place.file !== 'damaged.csv') faults.push(`${kind} names no file`)
  if (what.length < 10 || what.length > 600) faults.push(`${kind} says "${what}"`)
  if (!/^(?:[A-Z]|Did you mean)/.test(mend) || mend.length < 10 || mend.length > 900)
    faults.push(`${kind} mends by "${mend}"`)
  if (/\p{Cc}/u.test(what + mend + (place.cell ?? '') + (place.name ?? '')))
    faults.push(`${kind} shows control letters`)
  for (const count of [place.line, place.column]) {
    if (count !== undefined && !(Number.isInteger(count) && count >= 1)) faults.push(`${kind} points to ${count}`)
  }
  const placed: readonly string[] = ['notANumber', 'tooFewCells', 'tooManyCells', 'noTime', 'timeBackwards']
  if (placed.includes(kind) && (place.line === undefined || place.column === undefined))
    faults.push(`${kind} has no line and column`)
  return faults
}

/** What is wrong with a record as such. */
function recordFaults({ channels, rows, remarks, sha256, columns }: RawRecord): string[] {
  const faults: string[] = []
  if (!(rows > 0) || channels.rows !== rows) faults.push(`${rows} rows, channels have ${channels.rows}`)
  if (!/^[0-9a-f]{64}$/.test(sha256)) faults.push(`the hash is ${sha256}`)
  if (columns.some(({ reason }) => reason.length < 5)) faults.push('a column has no reason')
  for (const name of channels.names) {
    const values = channels.read(name, 0, rows)
    if (values.length !== rows) faults.push(`${name} has ${values.length} of ${rows} rows`)
    if (values.some((value) => Math.abs(value) === Number.POSITIVE_INFINITY))
      faults.push(`${name} is infinite somewhere`)
    if (name === 'time' && values.some((value, row) => row > 0 && !(value >= values[row - 1])))
      faults.push('time runs backwards')
  }
  for (const { sentence, next, seen } of remarks) {
    if (sentence.length < 10 || next.length < 10 || !(seen > 0)) faults.push(`a remark says "${sentence}" "${next}"`)
  }
  return faults
}

/** The report as people read it. */
export function showReport(report: FuzzReport): string {
  const counts = (title: string, by: Readonly<Record<string, number>>): string[] => [
    title,
    ...Object.entries(by)
      .sort((a, b) => b[1] - a[1])
      .map(([kind, count]) => `  ${kind.padEnd(20)} ${String(count).padStart(8)}`),
  ]
  return [
    `${report.cases} damaged files: ${report.read} read (${report.readWithRemarks} with remarks), ${report.cases - report.read} refused`,
    ...counts('Refused, by the first problem:', report.refused),
    ...counts('All problems told:', report.problems),
    'Slowest:',
    ...report.slowest.map(({ milliseconds, what }) => `  ${milliseconds.toFixed(0).padStart(6)} ms  ${what}`),
    `${report.faults.length} faults`,
    ...report.faults.slice(0, 50).map((fault) => `  ${fault}`),
  ].join('\n')
}

if (import.meta.main) {
  const { values } = parseArgs({
    options: { count: { type: 'string', default: '10000' }, seed: { type: 'string', default: '1' } },
  })
  const [count, seed] = [Number(values.count), Number(values.seed)]
  const report = await fuzz({ count, seed }, (done) => {
    if (done % 500 === 0) process.stderr.write(`${done} of ${count}\n`)
  })
  process.stdout.write(`${showReport(report)}\n`)
  if (report.faults.length > 0) process.exitCode = 1
}
