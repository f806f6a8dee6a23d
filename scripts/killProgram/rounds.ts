import assert from 'node:assert/strict'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { randomFrom } from '../../src/core/numeric/index.ts'
import { contentOf, freshLab, type Ground, inLab, value, words } from './ground.ts'
import { type Heard, runProgram } from './programChild.ts'

/** Verbs that are killed. */
export const killedVerbs = ['add', 'watch'] as const

export type KilledVerb = (typeof killedVerbs)[number]

/** What became of the kills of one verb. */
export interface Tally {
  readonly verb: KilledVerb
  kills: number
  /** Kills that came too late: the program had ended by itself. */
  late: number
  /** Things that it told as kept or reduced, all of them found again. */
  acknowledged: number
  /** Labs that were finished after their kills and are the same as one without kills. */
  labs: number
}

export interface Rounds {
  readonly verb: KilledVerb
  readonly kills: number
  readonly seed: number
  readonly onKill?: (done: number) => void
}

/**
 * Kills the program at random moments, starts it again on the same lab, and so on until it gets through; then the next
 * lab. After each kill the lab is looked at as the next start would. Throws at the first thing that is not as it must be.
 */
export async function killRounds(ground: Ground, { verb, kills, seed, onKill }: Rounds): Promise<Tally> {
  const random = randomFrom(seed, killedVerbs.indexOf(verb))
  const tally: Tally = { verb, kills: 0, late: 0, acknowledged: 0, labs: 0 }
  const timed = join(ground.folder, `timed-${verb}`)
  await freshLab(timed)
  const longest = await finish(ground, verb, timed)
  for (let lab = 0; tally.kills < kills; lab++) {
    const place = join(ground.folder, `${verb}-${lab}`)
    await freshLab(place)
    for (let through = false; !through && tally.kills < kills; ) {
      const after = longest * (0.2 + 0.8 * random.uniform()) // before that the program is being loaded
      const heard = await runProgram(wordsOf(ground, verb, place), { killAfter: after })
      tally.kills++
      tally.acknowledged += await named(`${verb}, kill ${tally.kills} after ${after.toFixed(1)} ms`, () =>
        lookAfter(ground, place, heard),
      )
      through = await inLab(place, async (one) => (await contentOf(one)).results.size === ground.results.size)
      if (!heard.killed) tally.late++
      onKill?.(tally.kills)
    }
    await named(`${verb}, lab ${lab} at its end`, () => finish(ground, verb, place))
    tally.labs++
    rmSync(place, { recursive: true })
  }
  return tally
}

const wordsOf = ({ records, setup }: Ground, verb: KilledVerb, place: string): string[] => [
  ...[verb, records, '--lab', place, '--setup', setup, ...words],
  ...(verb === 'watch' ? ['--still', '1'] : []),
]

/** Lets the program get through, and holds the lab against the one without kills. Gives how long it took, ms. */
async function finish(ground: Ground, verb: KilledVerb, place: string): Promise<number> {
  const left = await inLab(place, async (lab) => ground.results.size - (await contentOf(lab)).results.size)
  // A watch ends when it is asked to; with nothing left to do, right after it has begun.
  const line = left > 0 ? /^reduced / : /^Watching /
  const interruptAt = verb === 'watch' ? { line, times: Math.max(1, left) } : undefined
  const heard = await runProgram(wordsOf(ground, verb, place), { interruptAt })
  assert.equal(heard.code, 0, `${heard.lines.join('\n')}\n${heard.complaint}`)
  await inLab(place, async (lab) => {
    assert.deepEqual(await contentOf(lab), { names: ground.names, results: ground.results })
    assert.deepEqual(value(await lab.check()).problems, [])
  })
  return heard.lasted
}

/** What must hold right after a kill. Gives how many things the program had acknowledged. */
async function lookAfter(ground: Ground, place: string, heard: Heard): Promise<number> {
  assert.ok(heard.killed || heard.code === 0, `ended with ${heard.code}: ${heard.complaint}`)
  return inLab(place, async (lab) => {
    assert.deepEqual(value(await lab.check()).problems, [])
    const { names, results } = await contentOf(lab)
    for (const [id, name] of names) assert.equal(name, ground.names.get(id), `record ${id} is none that was added`)
    for (const [id, sha256] of results) assert.equal(sha256, ground.results.get(id), `result ${id} is another`)
    const reduced = new Set(value(await lab.results.list()).map(({ origin }) => origin.raw.slice(0, 12)))
    const kept = new Set([...names.keys()].map((id) => id.slice(0, 12)))
    const told = heard.lines.flatMap((line) => {
      const [, what, id] = /^(kept|known|reduced) +([0-9a-f]{12}) /.exec(line) ?? []
      return what === undefined ? [] : [{ what, id }]
    })
    for (const { what, id } of told) {
      assert.ok(kept.has(id), `${what} ${id} was acknowledged and is not there`)
      assert.ok(what !== 'reduced' || reduced.has(id), `the result of ${id} was acknowledged and is not there`)
    }
    return told.filter(({ what }) => what !== 'known').length
  })
}

/** Says at which kill something was wrong. */
async function named<T>(what: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act()
  } catch (error) {
    throw new Error(`${what}: ${error instanceof Error ? error.message : error}`, { cause: error })
  }
}
