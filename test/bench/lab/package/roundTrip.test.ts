import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { describe, expect, test } from 'vitest'
import { amendRecord, type LabCall, verifyLab } from '../../../../src/bench/lab/index.ts'
import { makeLab } from '../../../../src/bench/lab/makeLab.ts'
import { type ExportArgs, exportLab, importPackage } from '../../../../src/bench/lab/package/index.ts'
import type { Lab } from '../../../../src/store/index.ts'
import { add, demoFolder, freshLab, look, outside, temporaryFolder, value } from '../labs.ts'

/** A clock that goes on by a second each time somebody looks. */
function ticking(from: string): typeof outside {
  let seconds = 0
  return { ...outside, now: () => new Date(Date.parse(from) + 1000 * seconds++) }
}

/** A lab with a past: corrections, a second setup and result, a study with two versions, results of two versions of the program. */
async function labWithPast(): Promise<LabCall> {
  const call = { ...(await freshLab()), why: 'a past' }
  const clock = ticking('2026-11-25T09:00:00Z')
  const folder = demoFolder('lacquer-a-1', 'wax')
  value((await add(call, [folder], { names: { study: 'Drawer runners', sample: 'wax' }, outside: clock })).done)
  const setup = join(folder, 'other.yaml')
  const text = readFileSync(join(folder, 'wax.setup.yaml'), 'utf8')
  writeFileSync(setup, text.replace('trackRadius: 15 mm', 'trackRadius: 16 mm'))
  value(await amendRecord({ word: 'wax.csv', setup, names: { sample: 'Wax B' }, facts: { replicate: 2 } }, call, clock))
  await look(call, async (lab) => {
    const change = { at: clock.now().toISOString(), who: 'AB', why: 'said more' }
    value(
      await lab.studies.correct(
        'drawer-runners',
        { note: 'For the shop.', facts: { aim: 1 } },
        { ...change, supersedes: 1 },
      ),
    )
    const paper = { subject: 'study', subjectId: 'drawer-runners', kind: 'question', name: '' } as const
    value(await lab.keepPaper({ ...paper, content: { speeds: '0.1–100 mm/s' }, after: 0 }, change))
    value(await lab.keepPaper({ ...paper, content: { speeds: '1–100 mm/s' }, after: 1 }, change))
    const own = { subject: 'lab', subjectId: 'lab', kind: 'material', name: 'birch' } as const
    value(await lab.keepPaper({ ...own, content: { modulus: '10 GPa' }, after: 0 }, change))
    const [wax] = value(await lab.records.list({ sample: 'wax-b' }))
    const sheet = { subject: 'record', subjectId: wax.id, kind: 'runSheet' } as const
    value(await lab.keepPaper({ ...sheet, content: { tilt: '0.2°' }, after: 0 }, change))
    value(await lab.about.correct('lacquer-workshop-invented', { note: 'Moved.' }, { ...change, supersedes: 1 }))
  })
  value(await verifyLab({ word: undefined, keep: true, threads: 0 }, call, { ...clock, program: 'kufe 0.0.1-test' }))
  return call
}

/** All that a lab holds, down to the bytes. */
async function allOf(lab: Lab) {
  const records = value(await lab.records.list())
  const results = value(await lab.results.list())
  return {
    history: value(await lab.history.list()),
    about: await Promise.all(value(await lab.about.list()).map(async ({ id }) => value(await lab.about.versions(id)))),
    studies: await Promise.all(
      value(await lab.studies.list()).map(async ({ id }) => value(await lab.studies.versions(id))),
    ),
    samples: value(await lab.samples.list()),
    setups: await Promise.all(value(await lab.setups.list()).map(async (sum) => value(await lab.setups.get(sum)))),
    records: await Promise.all(records.map(async ({ id }) => value(await lab.records.versions(id)))),
    bytes: await Promise.all(
      records.map(async ({ id }) => Buffer.from(value(await lab.records.bytes(id))).toString('hex')),
    ),
    papers: await Promise.all(
      [
        ['lab', 'lab'] as const,
        ...value(await lab.studies.list()).map(({ id }) => ['study', id] as const),
        ...records.map(({ id }) => ['record', id] as const),
      ].map(async ([subject, id]) =>
        Promise.all(value(await lab.papersOf(subject, id)).map(async (one) => value(await lab.paperVersions(one)))),
      ),
    ),
    results,
    texts: await Promise.all(results.map(async ({ id }) => value(await lab.results.text(id)))),
  }
}

const exported = async (call: LabCall, more: Partial<ExportArgs> = {}): Promise<string> => {
  const args = { word: undefined, out: join(temporaryFolder(), 'package'), creators: [], reports: false, ...more }
  return value(await exportLab(args, call, outside)).out
}

const elsewhere = (): LabCall => ({ place: join(temporaryFolder(), 'other'), who: 'ZZ', why: '' })

const filesUnder = (folder: string): string[] => (readdirSync(folder, { recursive: true }) as string[]).sort()

describe('a whole lab', () => {
  test.for(['package', 'package.zip'])('comes back from a %s as the same lab, history and all', async (name) => {
    const call = await labWithPast()
    const out = await exported(call, { out: join(temporaryFolder(), name) })
    const other = elsewhere()
    expect(value(await importPackage(out, other, outside))).toMatchObject({
      isNew: true,
      records: 2,
      known: 0,
      problems: [],
    })
    const all = await look(other, allOf)
    expect(all).toEqual(await look(call, allOf))
    expect(all.papers.flat(2)).toHaveLength(4)
    expect(value(await verifyLab({ word: undefined, keep: false, threads: 0 }, other, outside)).findings).toEqual([])
  })

  test('the same, taken in by an empty lab that was made before: all but the line that made it', async () => {
    const call = await labWithPast()
    const other = elsewhere()
    value(await makeLab(other, 'Somewhere else', outside))
    value(await importPackage(await exported(call), other, outside))
    const [there, here] = [await look(other, allOf), await look(call, allOf)]
    expect(there.bytes).toEqual(here.bytes)
    expect(there.texts).toEqual(here.texts)
    const said = (all: typeof here) =>
      all.records.map((versions) => versions.map(({ change: _, added: __, ...version }) => version))
    expect(said(there)).toEqual(said(here))
  })

  test('twice is once', async () => {
    const call = await labWithPast()
    const out = await exported(call)
    const other = elsewhere()
    value(await importPackage(out, other, outside))
    const before = await look(other, allOf)
    expect(value(await importPackage(out, other, outside))).toMatchObject({ isNew: false, records: 0, known: 2 })
    expect(await look(other, allOf)).toEqual(before)
  })

  test('an import that was broken off anywhere goes on and gives the same lab', async () => {
    const call = await labWithPast()
    const out = await exported(call)
    const wanted = await look(call, allOf)
    for (let stopAt = 1; ; stopAt++) {
      const other = elsewhere()
      const stop = { aborted: false }
      let steps = 0
      const progress = (): void => {
        if (++steps === stopAt) stop.aborted = true
      }
      value(await importPackage(out, other, { ...outside, stop, progress }))
      value(await importPackage(out, other, outside))
      expect(await look(other, allOf)).toEqual(wanted)
      if (steps < stopAt) break
    }
  })

  test('the same lab gives the same package', async () => {
    const call = await labWithPast()
    const [first, second] = [await exported(call), await exported(call)]
    expect(filesUnder(second)).toEqual(filesUnder(first))
    for (const file of ['checksums.sha256', 'ro-crate-metadata.json'])
      expect(readFileSync(join(second, file), 'utf8')).toBe(readFileSync(join(first, file), 'utf8'))
  })
})

describe('a part of a lab', () => {
  test('one record with its study, sample, setups and results, and what the reports say', async () => {
    const call = await labWithPast()
    const out = await exported(call, { word: 'wax.csv', reports: true, licence: 'CC-BY-4.0', creators: ['Workshop'] })
    const other = elsewhere()
    expect(value(await importPackage(out, other, outside))).toMatchObject({ records: 1, results: 4 })
    await look(other, async (lab) => {
      expect(value(await lab.records.list())).toMatchObject([
        { name: 'wax.csv', version: 2, sample: 'wax-b', replicate: 2 },
      ])
      expect(value(await lab.setups.list())).toHaveLength(2)
      expect(value(await lab.samples.list()).map(({ id }) => id)).toEqual(['wax', 'wax-b'])
      const [{ id }] = value(await lab.records.list())
      expect(value(await lab.papersOf('record', id))).toMatchObject([{ kind: 'runSheet', content: { tilt: '0.2°' } }])
      expect(value(await lab.papersOf('study', 'drawer-runners'))).toMatchObject([{ kind: 'question', version: 2 }])
      expect(value(await lab.papersOf('lab', 'lab'))).toMatchObject([{ kind: 'material', name: 'birch' }])
    })
    const [folder] = readdirSync(join(out, 'records'))
    expect(readdirSync(join(out, 'records', folder))).toEqual(
      expect.arrayContaining(['curve.svg', 'turn-map.svg', 'points.csv', 'raw.csv', 'report.html', 'report.pdf']),
    )
    const descriptor = JSON.parse(readFileSync(join(out, 'datapackage.json'), 'utf8'))
    expect(descriptor).toMatchObject({
      title: 'wax.csv',
      licenses: [{ name: 'CC-BY-4.0' }],
      contributors: [{ title: 'Workshop' }],
    })
  })

  test('into a lab with things of its own: it gets what it does not have, and a line that says from where', async () => {
    const call = await labWithPast()
    const out = await exported(call, { word: 'drawer-runners' })
    const other = { ...(await freshLab()), who: 'ZZ' }
    value((await add(other, [demoFolder('wax', 'lacquer-b-1')], { names: { study: 'Drawer runners' } })).done)
    expect(value(await importPackage(out, other, outside))).toMatchObject({
      isNew: false,
      records: 1,
      known: 1,
      problems: [],
    })
    await look(other, async (lab) => {
      const records = value(await lab.records.list())
      expect(records.map(({ name }) => name)).toEqual(['lacquer-b-1.csv', 'wax.csv', 'lacquer-a-1.csv'])
      expect(records[1]).toMatchObject({ version: 1, sample: null }) // what is said there stays
      expect(value(await lab.studies.versions('drawer-runners'))).toHaveLength(1)
      const [about] = value(await lab.about.list())
      expect(about).toMatchObject({ version: 2, facts: { imports: [{ package: 'package' }] }, change: { who: 'ZZ' } })
      expect(value(await lab.check()).problems).toEqual([])
    })
  })
})

test('the same origin with other bytes is told, and both labs keep theirs', async () => {
  const call = await labWithPast()
  const out = await exported(call)
  const other = elsewhere()
  // The other lab says that the very same program made something else of it.
  const folder = demoFolder('wax')
  value(await makeLab(other, 'Elsewhere', outside))
  value((await add(other, [folder])).done)
  const database = new DatabaseSync(join(other.place, 'kufe.sqlite'))
  database.exec('drop trigger results_no_update')
  database.exec("update results set sha256 = replace(sha256, substr(sha256, 1, 1), '0')")
  database.close()
  const taken = value(await importPackage(out, other, outside))
  expect(taken.problems).toMatchObject([{ kind: 'resultDiffers' }])
  expect(taken.results).toBe(5)
})
