// Kills "kufe add" and "kufe watch" at random moments, starts them again, and shows that the lab is the same in the end.
// Use: node scripts/killProgram.ts [--kills 200] [--seed 1] [--records 150]

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { layGround } from './killProgram/ground.ts'
import { killedVerbs, killRounds } from './killProgram/rounds.ts'

const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '200' },
    seed: { type: 'string', default: '1' },
    records: { type: 'string', default: '150' },
  },
})

const say = (text: string): boolean => process.stdout.write(`${text}\n`)

const folder = mkdtempSync(join(tmpdir(), 'kufe-kill-'))
try {
  const ground = await layGround(folder, Number(values.records))
  for (const verb of killedVerbs) {
    const onKill = (done: number): void => {
      if (done % 10 === 0) process.stderr.write(`${verb}: ${done} kills, all well so far\n`)
    }
    const rounds = { verb, kills: Number(values.kills) / killedVerbs.length, seed: Number(values.seed), onKill }
    const { kills, late, acknowledged, labs } = await killRounds(ground, rounds)
    say(
      `kufe ${verb}: ${kills} kills, ${late} of them too late, over ${labs} labs of ${values.records} records; ` +
        `${acknowledged} things acknowledged before the kills are there, every lab came out the same as without kills.`,
    )
  }
} finally {
  rmSync(folder, { recursive: true, force: true })
}
