import { join } from 'node:path'
import { expect, test } from 'vitest'
import { change, freshLab, kinds, openedLab, rawBytes, value } from './engines.ts'
import { noMount, smallDisk } from './smallDisk.ts'

test('a disk that fills up while records are added harms nothing', async ({ skip }) => {
  const disk = smallDisk('4m')
  if (disk === undefined) return skip(noMount)
  const where = join(disk.folder, 'lab')
  const lab = await freshLab(where)
  const kept: string[] = []
  let seen: string[] = []
  for (let number = 0; seen.length === 0; number++) {
    const added = await lab.records.add(
      [{ bytes: rawBytes(number, 90_000 + number), name: `${number}.csv` }],
      change(number),
    )
    seen = kinds(added)
    if (added.ok) kept.push(added.value[0].record.id)
  }
  expect(seen).toEqual(['diskFull'])
  expect(kept.length).toBeGreaterThan(10)
  expect(value(await lab.records.list()).map(({ id }) => id)).toEqual(kept)
  await lab.close()
  disk.remount('size=8m')
  const again = await openedLab(where)
  expect(value(await again.check())).toMatchObject({ raws: kept.length, problems: [] })
  value(await again.records.add([{ bytes: rawBytes(1000, 90_000), name: 'later.csv' }], change(59)))
  expect(value(await again.records.list())).toHaveLength(kept.length + 1)
})

test('a disk that fills up while the database grows harms nothing', async ({ skip }) => {
  const disk = smallDisk('4m')
  if (disk === undefined) return skip(noMount)
  const where = join(disk.folder, 'lab')
  const lab = await freshLab(where)
  const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const { setup } = value(await lab.setups.add('rig: one\n', change(2)))
  const kept: string[] = []
  let seen: string[] = []
  for (let seed = 0; seen.length === 0; seed++) {
    const origin = { raw: record.id, setup: setup.sha256, options: {}, program: 'kufe 0.1.0', seed }
    const added = await lab.results.add([{ kind: 'reduction', origin, text: 'x'.repeat(100_000) }], change(3))
    seen = kinds(added)
    if (added.ok) kept.push(added.value[0].result.id)
  }
  expect(seen).toEqual(['diskFull'])
  expect(kept.length).toBeGreaterThan(5)
  expect(value(await lab.results.list()).map(({ id }) => id)).toEqual(kept)
  await lab.close()
  disk.remount('size=16m')
  const again = await openedLab(where)
  expect(value(await again.check())).toMatchObject({ results: kept.length, problems: [] })
  value(await again.samples.add({ id: 'a', title: 'A' }, change(4)))
})

test('a backup to a disk that is too small is none, and can be made again there', async ({ skip }) => {
  const disk = smallDisk('2m')
  if (disk === undefined) return skip(noMount)
  const own = smallDisk('16m')
  if (own === undefined) return skip(noMount)
  const lab = await freshLab(join(own.folder, 'lab'))
  const batch = Array.from({ length: 40 }, (_, i) => ({ bytes: rawBytes(i, 90_000 + i), name: `${i}.csv` }))
  value(await lab.records.add(batch, change(1)))
  const to = join(disk.folder, 'backup')
  expect(kinds(await lab.backup(to))).toEqual(['diskFull'])
  disk.remount('size=16m')
  expect(value(await lab.backup(to))).toMatchObject({ raws: 40, problems: [] })
  expect(value(await (await openedLab(to)).check())).toMatchObject({ raws: 40, problems: [] })
})
