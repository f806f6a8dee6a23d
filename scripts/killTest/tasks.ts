import assert from 'node:assert/strict'
import { cpSync, existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { newLab, openLab } from '../../src/store/index.ts'
import { laterMigrations } from '../testMigrations.ts'
import { type Heard, type Killing, runChild } from './child.ts'
import { inLab, keptItsWord, kinds, never, opening, rightResults, soundRecords, value } from './findings.ts'

/** What a child may be killed at. */
export const taskNames = ['add', 'backup', 'migrate', 'new'] as const

/** Name of one such task. */
export type TaskName = (typeof taskNames)[number]

/** Where the labs of a kill test lie. */
export interface Ground {
  readonly folder: string
  /** The lab that grows from kill to kill. */
  readonly growing: string
  /** A small lab that is copied. */
  readonly small: string
  /** A place for a new lab. */
  readonly place: () => Promise<string>
}

/** What one kill left. */
export interface Aftermath {
  readonly heard: Heard
  /** Kept, though the child was killed before it could say so. */
  readonly unsaid: number
  /** Files that no row named. */
  readonly leftOver: number
}

const lab = { id: 'workshop', title: 'Lacquer workshop (invented)' }

/** Makes the labs; the small one holds so many records. */
export async function layGround(folder: string, place: Ground['place'], records: number): Promise<Ground> {
  const [growing, small] = [await place(), await place()]
  for (const where of [growing, small]) await value(await newLab(where, lab, opening)).close()
  await runChild(['add', small, '0', String(records)])
  return { folder, growing, small, place }
}

const counted = ({ count }: Killing): string[] => (count === undefined ? [] : [String(count)])

/** Adds to a lab until the kill. */
export async function killAdding({ growing }: Ground, killing: Killing): Promise<Aftermath> {
  const before = await inLab(growing, {}, async (lab) => value(await lab.records.list()).length)
  const heard = await runChild(['add', growing, String(before), ...counted(killing)], killing)
  return inLab(growing, {}, async (lab) => {
    const ids = await soundRecords(lab, before)
    await keptItsWord(lab, heard, ids)
    const acknowledged = heard.kept.filter((word) => word.startsWith('record')).length
    const unsaid = ids.length - before - acknowledged
    assert.ok(unsaid >= 0 && unsaid <= 4, `${unsaid} records are there that nobody acknowledged`)
    const { files } = value(await lab.tidy(never))
    assert.deepEqual(value(await lab.check()).problems, [])
    return { heard, unsaid, leftOver: files }
  })
}

/** Backs a lab up again and again until the kill. */
export async function killBackup({ folder, small }: Ground, killing: Killing): Promise<Aftermath> {
  const to = join(folder, 'backup')
  const heard = await runChild(['backup', small, to, ...counted(killing)], killing)
  const ids = await inLab(small, {}, (lab) => soundRecords(lab, 0))
  let unsaid = 0
  for (let number = 0; number <= heard.kept.length; number++) {
    const copy = `${to}-${number}`
    if (number === heard.kept.length) {
      const opened = await openLab(copy, opening)
      if (opened.ok) {
        unsaid++
        await opened.value.close()
      } else {
        assert.ok(['labMissing', 'labUnfinished'].includes(kinds(opened)[0]), kinds(opened).join())
        value(await inLab(small, {}, (lab) => lab.backup(copy))) // the next start needs no repair by hand
      }
    }
    await inLab(copy, {}, async (lab) => {
      assert.deepEqual(await soundRecords(lab, 0), ids)
      await rightResults(lab)
    })
    rmSync(copy, { recursive: true })
  }
  return { heard, unsaid, leftOver: 0 }
}

/** Brings a lab of an older program up until the kill. */
export async function killMigration({ folder, small }: Ground, killing: Killing): Promise<Aftermath> {
  const where = join(folder, 'older')
  cpSync(small, where, { recursive: true })
  const ids = await inLab(small, {}, (lab) => soundRecords(lab, 0))
  const heard = await runChild(['migrate', where], killing)
  const older = await openLab(where, opening)
  if (older.ok) {
    assert.deepEqual(await soundRecords(older.value, 0), ids)
    await older.value.close()
  } else assert.deepEqual(kinds(older), ['labNewer'])
  if (heard.kept.length > 0) assert.ok(!older.ok, 'the new schema was acknowledged and is not there')
  await inLab(where, { migrations: laterMigrations }, async (lab) => {
    assert.deepEqual(await soundRecords(lab, 0), ids)
    await rightResults(lab)
  })
  const copy = new DatabaseSync(join(where, 'backups', `before-version-${laterMigrations.length}.sqlite`), {
    readOnly: true,
  })
  assert.equal(copy.prepare('pragma integrity_check').get()?.integrity_check, 'ok')
  assert.equal(copy.prepare('select count(*) as n from record_versions where version = 1').get()?.n, ids.length)
  copy.close()
  rmSync(where, { recursive: true })
  return { heard, unsaid: older.ok ? 0 : 1 - heard.kept.length, leftOver: 0 }
}

/** Makes a lab until the kill. */
export async function killMaking({ place }: Ground, killing: Killing): Promise<Aftermath> {
  const where = await place()
  const heard = await runChild(['new', where], killing)
  const opened = await openLab(where, opening)
  if (opened.ok) await opened.value.close()
  else {
    assert.deepEqual(heard.kept, [], 'the lab was acknowledged and is not there')
    assert.ok(['labMissing', 'labUnfinished'].includes(kinds(opened)[0]), kinds(opened).join())
    await value(await newLab(where, lab, opening)).close()
  }
  await inLab(where, {}, async (lab) => assert.equal(value(await lab.about.list()).length, 1))
  if (existsSync(where)) rmSync(where, { recursive: true })
  return { heard, unsaid: opened.ok ? 1 - heard.kept.length : 0, leftOver: 0 }
}
