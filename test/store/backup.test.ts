import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { type Lab, restoreLab } from '../../src/store/index.ts'
import { openEngine } from '../../src/store/opening.ts'
import { keptTables } from '../../src/store/schema/tables.ts'
import {
  change,
  engines,
  folderEngine,
  freshLab,
  kinds,
  openedLab,
  rawBytes,
  temporaryFolder,
  value,
} from './engines.ts'

/** Puts something into every table, with corrections. */
async function fill(lab: Lab): Promise<void> {
  value(await lab.studies.add({ id: 's', title: 'S', facts: { question: 'which?', margin: 0.1 } }, change(1)))
  value(await lab.samples.add({ id: 'a', title: 'A' }, change(2)))
  value(await lab.samples.correct('a', { note: 'from the grey tin' }, { ...change(3, 'asked again'), supersedes: 1 }))
  const { setup } = value(await lab.setups.add('rig: µ\n', change(4)))
  const batch = Array.from({ length: 450 }, (_, i) => ({ bytes: rawBytes(i, 300 + i), name: `${i}.csv`, sample: 'a' }))
  const records = value(await lab.records.add(batch, change(5)))
  value(
    await lab.records.correct(records[7].record.id, { replicate: 2 }, { ...change(6, 'miscounted'), supersedes: 1 }),
  )
  const results = records.slice(0, 3).map(({ record }) => ({
    kind: 'fit' as const,
    origin: { raw: record.id, setup: setup.sha256, options: { draws: 10 }, program: 'kufe 0.1.0', seed: -7 },
    text: `{"of":"${record.name}"}\n`,
  }))
  value(await lab.results.add(results, change(7)))
  const question = { subject: 'study', subjectId: 's', kind: 'question' } as const
  value(await lab.keepPaper({ ...question, content: { speeds: 12 }, after: 0 }, change(8)))
  value(await lab.keepPaper({ ...question, content: { speeds: 9 }, after: 1 }, change(8, 'too long')))
}

/** All rows that are kept. */
async function rows(where: string): Promise<Record<string, unknown[]>> {
  const engine = openEngine(where)
  const all: Record<string, unknown[]> = {}
  for (const [table, order] of keptTables) {
    all[table] = await engine.read
      .selectFrom(table as 'history')
      .selectAll()
      .orderBy(order as 'seq')
      .execute()
  }
  await engine.close()
  return all
}

const ways = engines.flatMap((from) => engines.map((to) => ({ name: `${from.name} to ${to.name}`, from, to })))

describe.each(ways)('a copy from $name', ({ from, to }) => {
  test('is the same lab row by row and byte by byte', async () => {
    const [where, target] = [await from.place(), await to.place()]
    const lab = await freshLab(where)
    await fill(lab)
    const seen: string[] = []
    const report = value(
      await restoreLab(where, target, { progress: (what, done, of) => seen.push(`${what} ${done}/${of}`) }),
    )
    expect(report).toMatchObject({ raws: 450, problems: [] })
    expect([seen.length, seen.at(-1)]).toEqual([450, 'records 450/450'])
    expect(await rows(target)).toEqual(await rows(where))
    expect(report.rows).toBe(Object.values(await rows(where)).flat().length)
    const copy = await openedLab(target)
    expect(value(await copy.check())).toEqual({ raws: 450, setups: 1, results: 3, papers: 2, problems: [] })
    for (const number of [0, 449]) {
      const { id } = value(await copy.records.list())[number]
      expect(value(await copy.records.bytes(id))).toEqual(rawBytes(number, 300 + number))
    }
    value(await copy.samples.correct('a', { title: 'A2' }, { ...change(9, 'goes on'), supersedes: 2 }))
  })

  test('is not made where there is a lab', async () => {
    const [where, target] = [await from.place(), await to.place()]
    await freshLab(where)
    const other = await freshLab(target)
    expect(kinds(await restoreLab(where, target))).toEqual(['labExists'])
    expect(value(await other.history.list())).toHaveLength(1)
  })
})

describe.each(engines)('a backup on $name', ({ place }) => {
  test('is the lab of one instant while others go on writing', async () => {
    const lab = await freshLab(await place())
    const batch = Array.from({ length: 60 }, (_, i) => ({ bytes: rawBytes(i, 5000 + i), name: `${i}.csv` }))
    value(await lab.records.add(batch, change(1)))
    const to = join(temporaryFolder(), 'backup')
    let going = true
    let more = 0
    const writing = (async () => {
      for (; going; more++)
        value(await lab.records.add([{ bytes: rawBytes(more, 100 + more), name: `m${more}.csv` }], change(2)))
    })()
    const report = value(await lab.backup(to))
    going = false
    await writing
    expect(more).toBeGreaterThan(1)
    const copy = await openedLab(to)
    const copied = value(await copy.records.list())
    expect(copied).toHaveLength(report.raws)
    expect(value(await lab.records.list()).slice(0, copied.length)).toEqual(copied)
    expect(value(await copy.check())).toMatchObject({ raws: report.raws, problems: [] })
    expect(value(await copy.history.list())).toHaveLength(report.raws + 1)
  })
})

test('a backup names what was lost or changed before, and keeps the rest', async () => {
  const where = await folderEngine.place()
  const lab = await freshLab(where)
  const batch = [0, 1, 2].map((number) => ({ bytes: rawBytes(number), name: `${number}.csv` }))
  const ids = value(await lab.records.add(batch, change(1))).map(({ record }) => record.id)
  const file = (id: string) => join(where, 'raw', id.slice(0, 2), id)
  writeFileSync(file(ids[0]), readFileSync(file(ids[0])).subarray(1))
  rmSync(file(ids[2]))
  const to = join(temporaryFolder(), 'backup')
  const report = value(await lab.backup(to))
  expect(report).toMatchObject({ raws: 1, bytes: 200 })
  expect(report.problems.map(({ kind, place }) => [kind, place.cell])).toEqual([
    ['rawChanged', ids[0]],
    ['rawMissing', ids[2]],
  ])
  const copy = await openedLab(to)
  expect(value(await copy.records.bytes(ids[1]))).toEqual(rawBytes(1))
  expect(value(await copy.check()).problems.map(({ kind }) => kind)).toEqual(['rawMissing', 'rawMissing'])
  value(await copy.records.list())
})

test('a source that is no lab is refused', async () => {
  const folder = temporaryFolder()
  expect(kinds(await restoreLab(folder, join(folder, 'copy')))).toEqual(['labMissing'])
})
