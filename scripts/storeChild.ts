// A process that works on a lab and says what was acknowledged, to be killed: the store's tests run it.
// Use: node scripts/storeChild.ts add|backup|migrate|new PLACE [FIRST [COUNT]], KUFE_DIE_AT=n to die at its n-th step

import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'
import { DatabaseSync, StatementSync } from 'node:sqlite'
import { randomFrom } from '../src/core/numeric/index.ts'
import type { Outcome } from '../src/core/terms/index.ts'
import { type Change, type KeptRecord, type Lab, newLab, openLab } from '../src/store/index.ts'
import { laterMigrations } from './testMigrations.ts'

/** Bytes of made-up record `number`, 1 to 20 kB. */
export function inventedBytes(number: number): Uint8Array {
  const random = randomFrom(20_261_125, number)
  const bytes = new Uint8Array(1000 + random.integer(19_000))
  for (let i = 0; i < bytes.length; i++) bytes[i] = random.integer(256)
  return bytes
}

/** Text of the result that goes with it. */
export const inventedResult = (number: number): string => `{"record":${number},"points":[${number / 7}]}\n`

const change = (number: number): Change => ({ at: '2026-11-25T09:00:00.000Z', who: 'Ada', why: `number ${number}` })
const opening = { change: change(0), program: 'kufe 0.1.0' }

/** Written at once and not through a buffer: what was said before the kill is heard. */
const say = (text: string): number => fs.writeSync(1, `${text}\n`)

function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  say(`problem ${JSON.stringify(outcome.problems)}`)
  process.exit(1)
}

/** Adds records with a result each and now and then a correction, in batches of 1 to 4. */
async function add(lab: Lab, first: number, count: number): Promise<void> {
  const { setup } = value(await lab.setups.add('rig: invented\n', change(0)))
  for (let number = first; number < first + count; ) {
    const batch = Array.from({ length: Math.min(1 + (number % 4), first + count - number) }, (_, i) => number + i)
    const records = batch.map((n) => ({ bytes: inventedBytes(n), name: `${n}.csv`, setup: setup.sha256 }))
    const added = value(await lab.records.add(records, change(number)))
    for (const { record } of added) say(`kept record ${record.id}`)
    const results = added.map(({ record }, i) => ({
      kind: 'reduction' as const,
      origin: { raw: record.id, setup: setup.sha256, options: {}, program: 'kufe 0.1.0', seed: 1 },
      text: inventedResult(batch[i]),
    }))
    for (const { result } of value(await lab.results.add(results, change(number)))) say(`kept result ${result.id}`)
    if (number % 3 === 0) await correct(lab, added[0].record, number)
    number += batch.length
  }
}

/** Corrects a record, unless another process is faster. */
async function correct(lab: Lab, { id, version }: KeptRecord, number: number): Promise<void> {
  if (version > 1) return
  const corrected = await lab.records.correct(id, { ballSet: 'steel' }, { ...change(number), supersedes: 1 })
  if (!corrected.ok && corrected.problems[0].kind === 'changedMeanwhile') return
  say(`kept correction ${value(corrected).id}`)
}

/** Kills this process as a power cut would, before its n-th step on the disk or in the database. */
function dieAt(step: number): void {
  let count = 0
  const wrap = <K extends string>(owner: Record<K, (...args: never[]) => unknown>, name: K): void => {
    const original = owner[name]
    owner[name] = function (this: unknown, ...args: never[]) {
      if (++count === step) process.kill(process.pid, 'SIGKILL')
      return original.apply(this, args)
    }
  }
  for (const name of [
    'openSync',
    'writeSync',
    'fsyncSync',
    'renameSync',
    'mkdirSync',
    'rmSync',
    'closeSync',
  ] as const) {
    wrap(fs as unknown as Record<string, (...args: never[]) => unknown>, name)
  }
  syncBuiltinESMExports()
  wrap(DatabaseSync.prototype as unknown as Record<string, (...args: never[]) => unknown>, 'exec')
  for (const name of ['run', 'all']) {
    wrap(StatementSync.prototype as unknown as Record<string, (...args: never[]) => unknown>, name)
  }
}

async function run(task: string, place: string, [first = '0', count = '1000000']: string[]): Promise<void> {
  if (process.env.KUFE_DIE_AT !== undefined) dieAt(Number(process.env.KUFE_DIE_AT))
  say('ready')
  if (task === 'new') {
    await value(await newLab(place, { id: 'workshop', title: 'Lacquer workshop (invented)' }, opening)).close()
    say('kept lab')
    return
  }
  const migrations = task === 'migrate' ? laterMigrations : undefined
  await using lab = value(await openLab(place, { ...opening, migrations }))
  if (task === 'migrate') say('kept schema')
  if (task === 'add') await add(lab, Number(first), Number(count))
  if (task === 'backup') {
    for (let number = 0; number < Number(count); number++) {
      value(await lab.backup(`${first}-${number}`))
      say(`kept backup ${first}-${number}`)
    }
  }
}

if (import.meta.main) {
  const [task, place, ...rest] = process.argv.slice(2)
  await run(task, place, rest)
}
