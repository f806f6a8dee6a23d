import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { killAtSteps, killRounds } from '../../scripts/killTest/killRounds.ts'
import { layGround, taskNames } from '../../scripts/killTest/tasks.ts'
import { engines, temporaryFolder } from './engines.ts'

// The full test, 200 kills and every step: node scripts/killTest.ts

describe.each(engines)('kill -9 on $name', ({ name, place }) => {
  test('at random moments loses nothing that was acknowledged', { timeout: 300_000 }, async () => {
    const ground = await layGround(temporaryFolder(), place, 5)
    // A database is brought up only with a place for the copy, which the child does not know.
    const some =
      name === 'sqlite' ? { kills: 20, tasks: taskNames } : { kills: 6, tasks: ['add', 'backup', 'new'] as const }
    const tallies = await killRounds(ground, { ...some, seed: 20_261_125 })
    expect(tallies.reduce((sum, { kills }) => sum + kills, 0)).toBe(some.kills)
    expect(tallies.find(({ task }) => task === 'add')?.acknowledged).toBeGreaterThan(0)
  })
})

test.for([
  { task: 'new', first: 2, stride: 7 },
  { task: 'add', first: 30, stride: 9 },
  { task: 'backup', first: 20, stride: 17 },
  { task: 'migrate', first: 14, stride: 4 },
] as const)('kill -9 at chosen steps of "$task"', { timeout: 300_000 }, async ({ task, first, stride }) => {
  let labs = 0
  const folder = temporaryFolder()
  const ground = await layGround(folder, async () => join(folder, `lab-${labs++}`), 3)
  expect(await killAtSteps(ground, task, { first, stride })).toBeGreaterThan(1)
})
