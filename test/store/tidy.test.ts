import { mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, onTestFinished, test } from 'vitest'
import { checksum } from '../../src/store/index.ts'
import { openEngine } from '../../src/store/opening.ts'
import { change, engines, folderEngine, freshLab, kinds, rawBytes, value } from './engines.ts'

const later = '2100-01-01T00:00:00Z'

test('what killed processes left is cleared away, what was kept is not', async () => {
  const where = await folderEngine.place()
  const lab = await freshLab(where)
  value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
  const orphan = checksum(rawBytes(2))
  mkdirSync(join(where, 'raw', orphan.slice(0, 2)), { recursive: true })
  writeFileSync(join(where, 'raw', orphan.slice(0, 2), orphan), rawBytes(2))
  for (const [name, second] of [
    ['1-0.part', 10],
    ['1-1.part', 2e9],
  ] as const) {
    const part = join(where, 'raw', 'incoming', name)
    writeFileSync(part, 'half')
    utimesSync(part, second, second)
  }
  expect(value(await lab.records.list())).toHaveLength(1)
  expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
  expect(value(await lab.tidy('2020-01-01T00:00:00Z'))).toEqual({ files: 2, bytes: 200 })
  expect(readdirSync(join(where, 'raw', 'incoming'))).toEqual(['1-1.part'])
  expect(value(await lab.tidy('2020-01-01T00:00:00Z'))).toEqual({ files: 0, bytes: 0 })
  expect(value(await lab.check())).toMatchObject({ raws: 1, problems: [] })
})

describe.each(engines)('tidying on $name', ({ place }) => {
  test('takes columns that others replaced', async () => {
    const lab = await freshLab(await place())
    const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    const files = { raw: record.id, reading: 'r', rows: 1, program: 'kufe 0.1.0', pyramid: rawBytes(9, 10) }
    for (const number of [3, 4]) value(await lab.columns.put([{ ...files, parquet: rawBytes(number, 300) }]))
    expect(value(await lab.tidy(later))).toEqual({ files: 1, bytes: 300 })
    expect(value(await lab.columns.get(record.id, 'r'))?.parquet).toEqual(rawBytes(4, 300))
  })

  test('waits for a record on its way in, which then is whole', async () => {
    const where = await place()
    const lab = await freshLab(where)
    const engine = openEngine(where)
    onTestFinished(() => engine.close())
    const staged = await engine.raw.stage(rawBytes(1))
    const { sha256, size } = staged
    let tidying: ReturnType<typeof lab.tidy> | undefined
    await engine.write(async (writing) => {
      tidying = lab.tidy(later) // it must not see the bytes between their name and their row
      await engine.raw.settle(writing, [staged])
      await new Promise((resolve) => setTimeout(resolve, 100))
      const row = { seq: 2, ...change(1), what: 'created', kind: 'record', id: sha256, version: 1 } as const
      await writing.insertInto('history').values(row).execute()
      await writing.insertInto('raw').values({ sha256, size, change: 2 }).execute()
    })
    expect(tidying && value(await tidying)).toEqual({ files: 0, bytes: 0 })
    expect(value(await lab.records.bytes(sha256))).toEqual(rawBytes(1))
  })
})

test('a record that was tidied away too early is refused, and can be added again', async () => {
  const lab = await freshLab(await folderEngine.place())
  async function* slow(): AsyncGenerator<Uint8Array> {
    yield rawBytes(1)
    value(await lab.tidy(later))
    yield rawBytes(2)
  }
  expect(kinds(await lab.records.add([{ bytes: slow(), name: 'slow.csv' }], change(1)))).toEqual(['changedMeanwhile'])
  expect(value(await lab.records.list())).toEqual([])
  expect(
    value(await lab.records.add([{ bytes: [rawBytes(1), rawBytes(2)], name: 'slow.csv' }], change(2))),
  ).toMatchObject([{ isNew: true }])
})
