// Kills processes that work on a lab at random moments, and shows what became of everything that they had acknowledged.
// Use: node scripts/killTest.ts [--kills 200] [--seed 1] [--engine sqlite|postgres] [--steps]

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { killAtSteps, killRounds, type Tally } from './killTest/killRounds.ts'
import { layGround, type TaskName, taskNames } from './killTest/tasks.ts'
import { startPostgres } from './postgresForTests.ts'

const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '200' },
    seed: { type: 'string', default: '1' },
    engine: { type: 'string', default: 'sqlite' },
    steps: { type: 'boolean', default: false },
  },
})

const say = (text: string): boolean => process.stdout.write(`${text}\n`)

const folder = mkdtempSync(join(tmpdir(), 'kufe-kill-'))
const server = values.engine === 'postgres' ? await startPostgres({ durable: true }) : undefined
if (server !== undefined && 'why' in server) throw new Error(server.why)
try {
  let labs = 0
  const place = server?.newDatabase ?? (async () => join(folder, `lab-${labs++}`))
  const ground = await layGround(folder, place, values.steps ? 3 : 40)
  // A database is brought up only with a place for the copy, which the child does not know.
  const tasks: readonly TaskName[] = server === undefined ? taskNames : ['add', 'backup', 'new']
  if (values.steps) {
    for (const task of tasks)
      say(`${task}: killed at each of ${await killAtSteps(ground, task, { first: 1, stride: 1 })} steps, all well`)
  } else {
    const onKill = (done: number): void => {
      if (done % 20 === 0) process.stderr.write(`${done} kills, all well so far\n`)
    }
    const tallies = await killRounds(ground, { kills: Number(values.kills), seed: Number(values.seed), tasks, onKill })
    say(table(tallies))
    say(
      `${tallies.reduce((sum, { kills }) => sum + kills, 0)} kills on ${values.engine}, seed ${values.seed}: everything acknowledged is there, nothing half-written was seen, nothing had to be repaired by hand.`,
    )
  }
} finally {
  await server?.stop()
  rmSync(folder, { recursive: true, force: true })
}

function table(tallies: readonly Tally[]): string {
  const heads = ['task', 'kills', 'late', 'acknowledged', 'unsaid', 'left over'] as const
  const rows = tallies.map(({ task, kills, late, acknowledged, unsaid, leftOver }) =>
    [task, kills, late, acknowledged, unsaid, leftOver].map(String),
  )
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i].length)))
  const line = (cells: readonly string[]): string =>
    cells.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  ')
  return [line(heads), ...rows.map(line)].join('\n')
}
