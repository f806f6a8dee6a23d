import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { contentOf, freshLab, type Ground, inLab, layGround, words } from '../../scripts/killProgram/ground.ts'
import { runProgram } from '../../scripts/killProgram/programChild.ts'
import { killedVerbs, killRounds } from '../../scripts/killProgram/rounds.ts'

// The same with 200 kills: node scripts/killProgram.ts

let folder: string
let ground: Ground
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-killing-'))
  ground = await layGround(folder, 24)
}, 60_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test('two processes that add the same records at once: both end well, and the lab is the same', async () => {
  const place = join(folder, 'two')
  await freshLab(place)
  const add = ['add', ground.records, '--lab', place, '--setup', ground.setup, ...words]
  const heard = await Promise.all([runProgram(add), runProgram(add)])
  expect(heard.map(({ code, complaint }) => ({ code, complaint }))).toEqual(Array(2).fill({ code: 0, complaint: '' }))
  expect(await inLab(place, contentOf)).toEqual({ names: ground.names, results: ground.results })
}, 60_000)

test.for(killedVerbs)(
  'kufe %s, killed at random moments and started again: all that was acknowledged is there, and the lab comes out the same',
  { timeout: 120_000 },
  async (verb) => {
    const tally = await killRounds(ground, { verb, kills: 5, seed: 7 })
    expect(tally.kills).toBe(5)
    expect(tally.late).toBeLessThan(5)
    expect(tally.acknowledged).toBeGreaterThan(0)
  },
)
