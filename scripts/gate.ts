// The one gate: `npm test` runs all of it, `npm test -- lint types` only the chores that are named.

import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { type ChoreResult, type TestReport, tally } from './tally.ts'

const folder = mkdtempSync(join(tmpdir(), 'kufe-gate-'))
const reportFile = join(folder, 'tests.json')
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))

interface Chore {
  readonly name: string
  readonly command: string
  /** Measures time, so nothing else runs beside it. */
  readonly alone?: true
}

/** Everything that must hold before a change goes in, the longest first. */
const chores: readonly Chore[] = [
  // What the program must do; the documentation's examples among it.
  { name: 'tests', command: `vitest run --reporter=dot --reporter=json --outputFile=${reportFile}` },
  // A copy of the project without its packages sets itself up and runs the demo.
  { name: 'fresh', command: 'node scripts/fresh.ts' },
  // Values are what they are taken for.
  { name: 'types', command: 'tsc -p tsconfig.json' },
  // The same for the page, which knows a browser and no Node.
  { name: 'page', command: 'tsc -p tsconfig.web.json' },
  // Core and figures compile where there is neither Node nor a page.
  { name: 'pure', command: 'tsc -p tsconfig.core.json' },
  // No dead file, export or package.
  { name: 'unused', command: 'knip --no-progress' },
  // No `any`, no long function, no clock in core; one format.
  { name: 'lint', command: 'biome check --error-on-warnings --max-diagnostics=60 .' },
  // No room imports what lies above it.
  { name: 'floors', command: 'node scripts/floors.ts' },
  // Short files, plain names, a doc comment on all that core exports.
  { name: 'shape', command: 'node scripts/shape.ts' },
  // Help comes at once.
  { name: 'start', command: 'node bench/start.ts', alone: true },
]

/** Longest that one chore may take before it counts as hung. */
const limitSeconds = 1800

/** What runs now; a stop of the gate stops it too. */
const running = new Set<ChildProcess>()
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.on(signal, () => {
    for (const child of running) child.kill(signal)
    process.exit(1)
  })
}

const say = (text: string): boolean => process.stdout.write(`${text}\n`)

function run({ name, command }: Chore): Promise<ChoreResult> {
  const started = performance.now()
  const [program, ...args] = command.split(' ')
  const env = { ...process.env, CI: '1', NO_COLOR: '1' }
  return new Promise((resolve) => {
    const child = spawn(program, args, { env, stdio: ['ignore', 'pipe', 'pipe'], timeout: limitSeconds * 1000 })
    running.add(child)
    const heard: string[] = []
    const end = (ok: boolean, more: string): void => {
      running.delete(child)
      const seconds = (performance.now() - started) / 1000
      say(`${ok ? 'ok    ' : 'FAILED'} ${name.padEnd(8)} ${seconds.toFixed(1).padStart(6)} s`)
      resolve({ name, ok, seconds, output: heard.join('') + more })
    }
    child.stdout.setEncoding('utf8').on('data', (text) => heard.push(text))
    child.stderr.setEncoding('utf8').on('data', (text) => heard.push(text))
    child.on('error', (error) => end(false, `${program} did not start: ${error.message}`))
    child.on('close', (code, signal) => end(code === 0, signal === null ? '' : `stopped by ${signal}\n`))
  })
}

/** Runs as many chores at once as there are processors. */
async function runAll(waiting: readonly Chore[], lanes: number): Promise<ChoreResult[]> {
  const queue = [...waiting]
  const results: ChoreResult[] = []
  const lane = async (): Promise<void> => {
    for (let chore = queue.shift(); chore !== undefined; chore = queue.shift()) results.push(await run(chore))
  }
  await Promise.all(Array.from({ length: lanes }, lane))
  return results
}

const wanted = process.argv.slice(2)
const unknown = wanted.filter((name) => !chores.some((chore) => chore.name === name))
if (unknown.length > 0) {
  say(`No chore is called ${unknown.join(', ')}; there are ${chores.map(({ name }) => name).join(', ')}.`)
  process.exit(2)
}
const chosen = chores.filter(({ name }) => wanted.length === 0 || wanted.includes(name))
// With Debian's packages at hand the store is tested on a real PostgreSQL and the pages in a real Chromium; elsewhere the tests say why they leave it out.
if (chosen.some(({ name }) => name === 'tests')) {
  const postgres = spawnSync('node', ['scripts/postgresForTests.ts', '--install'], { encoding: 'utf8' })
  if (postgres.status === 0) process.env.KUFE_TEST_POSTGRES = 'required'
  else say(`PostgreSQL is left out: ${postgres.stderr.trim() || postgres.stdout.trim()}`)
  const chromium = spawnSync('node', ['scripts/chromiumForTests.ts', '--install'], { encoding: 'utf8' })
  if (chromium.status === 0) process.env.KUFE_TEST_CHROMIUM = 'required'
  else say(`The browser is left out: ${chromium.stderr.trim() || chromium.stdout.trim()}`)
}
say(`Running ${chosen.map(({ name }) => name).join(', ')} …`)
const results = [
  ...(await runAll(
    chosen.filter(({ alone }) => !alone),
    availableParallelism(),
  )),
  ...(await runAll(
    chosen.filter(({ alone }) => alone),
    1,
  )),
]

const report: TestReport | undefined = existsSync(reportFile) ? JSON.parse(readFileSync(reportFile, 'utf8')) : undefined
const { passed, failed, skipped } = tally(results, 'tests', report)
for (const { name, output } of results.filter(({ ok }) => !ok)) say(`\n── ${name} ──\n${output.trimEnd()}`)
if (skipped.length > 0) say(`\nDid not run, ${skipped.length}:\n${skipped.map((name) => `  ${name}`).join('\n')}`)
say(`\nEach test counts, and each chore beside the tests.\n${passed} passed, ${failed} failed`)
process.exitCode = failed === 0 ? 0 : 1
