import { chmodSync, existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { laterMigrations } from '../../scripts/testMigrations.ts'
import { newLab, openLab } from '../../src/store/index.ts'
import { change, freshLab, kinds, openedLab, opening, rawBytes, temporaryFolder, value, workshop } from './engines.ts'
import { noMount, smallDisk } from './smallDisk.ts'

/** A folder and what makes it unwritable: rights for plain users, the mount for root, whom rights do not stop. */
function lockable(): { folder: string; lock: () => void } | undefined {
  if (process.getuid?.() === 0) {
    const disk = smallDisk('16m')
    return disk && { folder: disk.folder, lock: () => disk.remount('ro') }
  }
  const folder = temporaryFolder()
  const allow = (mode: number): void => {
    for (const path of [folder, join(folder, 'lab')]) if (existsSync(path)) chmodSync(path, mode)
  }
  onTestFinished(() => allow(0o755))
  return { folder, lock: () => allow(0o555) }
}

test('a lab in a read-only folder can be read, and says why it cannot be changed', async ({ skip }) => {
  const place = lockable()
  if (place === undefined) return skip(noMount)
  const where = join(place.folder, 'lab')
  const lab = await freshLab(where)
  const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  await lab.close()
  place.lock()

  const reader = await openedLab(where)
  expect(reader.readOnly).toBe(true)
  expect(value(await reader.records.list())).toEqual([record])
  expect(value(await reader.records.bytes(record.id))).toEqual(rawBytes(1))
  expect(value(await reader.check())).toMatchObject({ raws: 1, problems: [] })
  expect(value(await reader.records.add([{ bytes: rawBytes(1), name: 'again.csv' }], change(2)))).toEqual([
    { record, isNew: false },
  ])
  const refused = [
    await reader.records.add([{ bytes: rawBytes(2), name: 'two.csv' }], change(2)),
    await reader.samples.add({ id: 'a', title: 'A' }, change(2)),
    await reader.setups.add('rig: one\n', change(2)),
    await reader.records.correct(record.id, { name: 'x' }, { ...change(2), supersedes: 1 }),
    await reader.columns.put([]),
    await reader.tidy('2026-11-25T10:00:00Z'),
  ]
  expect(refused.flatMap(kinds)).toEqual(refused.map(() => 'labReadOnly'))
  expect(kinds(await openLab(where, { ...opening, migrations: laterMigrations }))).toEqual(['labReadOnly'])
  const to = join(temporaryFolder(), 'copy')
  expect(value(await reader.backup(to))).toMatchObject({ raws: 1, problems: [] })
  value(await (await openedLab(to)).samples.add({ id: 'a', title: 'A' }, change(3)))
})

test('a lab is not made in a read-only folder', async ({ skip }) => {
  const place = lockable()
  if (place === undefined) return skip(noMount)
  place.lock()
  const made = await newLab(join(place.folder, 'lab'), workshop, opening)
  expect(kinds(made)).toEqual(['labReadOnly'])
  expect(made.ok ? undefined : made.problems[0].place.file).toContain(place.folder)
})
