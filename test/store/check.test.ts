import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { expect, test } from 'vitest'
import { change, folderEngine, freshLab, kinds, openedLab, rawBytes, value } from './engines.ts'

/** A lab with three records, two setups, a result of each record and a paper of the first. */
async function fullLab() {
  const where = await folderEngine.place()
  const lab = await freshLab(where)
  const setups = ['rig: one\n', 'rig: two\n']
  const ids: string[] = []
  for (const text of setups) ids.push(value(await lab.setups.add(text, change(1))).setup.sha256)
  const batch = [0, 1, 2].map((number) => ({ bytes: rawBytes(number), name: `${number}.csv` }))
  const records = value(await lab.records.add(batch, change(2))).map(({ record }) => record.id)
  const results = records.map((raw, i) => ({
    kind: 'reduction' as const,
    origin: { raw, setup: ids[i % 2], options: {}, program: 'kufe 0.1.0', seed: 1 },
    text: `{"record":${i}}`,
  }))
  const kept = value(await lab.results.add(results, change(3))).map(({ result }) => result.id)
  const sheet = { subject: 'record', subjectId: records[0], kind: 'runSheet' } as const
  value(await lab.keepPaper({ ...sheet, content: { tilt: '0.2°' }, after: 0 }, change(4)))
  await lab.close()
  return { where, records, setups: ids, results: kept }
}

/** Changes rows as somebody would who knows how to get past the guards. */
function tamper(where: string, table: string, statement: string): void {
  const database = new DatabaseSync(join(where, 'kufe.sqlite'))
  database.exec(`drop trigger ${table}_no_update; ${statement}`)
  database.close()
}

/** Changes one byte of a file. */
function flip(file: string): void {
  const bytes = readFileSync(file)
  bytes[17] ^= 1
  writeFileSync(file, bytes)
}

const rawFile = (where: string, id: string): string => join(where, 'raw', id.slice(0, 2), id)

/** What a check of the whole lab finds: kinds, and what they are about. */
async function found(where: string, records?: string[]): Promise<[string, string | undefined][]> {
  const { problems } = value(await (await openedLab(where)).check({ records }))
  return problems.map(({ kind, place }) => [kind, place.cell])
}

test('a lab as it was kept has no problem, and says what was looked at', async () => {
  const { where, records } = await fullLab()
  const seen: string[] = []
  const lab = await openedLab(where)
  const report = await lab.check({ progress: (what, done, of) => seen.push(`${what} ${done}/${of}`) })
  expect(value(report)).toEqual({ raws: 3, setups: 2, results: 3, papers: 1, problems: [] })
  expect(seen).toEqual(['raw 1/3', 'raw 2/3', 'raw 3/3'])
  expect(value(await lab.check({ records: [records[1]] }))).toEqual({
    raws: 1,
    setups: 1,
    results: 1,
    papers: 0,
    problems: [],
  })
})

test('a changed raw byte is found and named, and the bytes are not given out', async () => {
  const { where, records } = await fullLab()
  flip(rawFile(where, records[1]))
  expect(await found(where)).toEqual([['rawChanged', records[1]]])
  expect(await found(where, [records[0]])).toEqual([])
  const lab = await openedLab(where)
  expect(kinds(await lab.records.bytes(records[1]))).toEqual(['rawChanged'])
  expect(kinds(await lab.records.bytes(records[0]))).toEqual([])
})

test('lost raw bytes are found and named', async () => {
  const { where, records } = await fullLab()
  rmSync(rawFile(where, records[2]))
  expect(await found(where)).toEqual([['rawMissing', records[2]]])
  expect(kinds(await (await openedLab(where)).records.bytes(records[2]))).toEqual(['rawMissing'])
})

test('a changed setup is found and named', async () => {
  const { where, records, setups } = await fullLab()
  tamper(where, 'setups', `update setups set text = 'rig: tw0' where sha256 = '${setups[1]}'`)
  expect(await found(where)).toEqual([['setupChanged', setups[1]]])
  expect(await found(where, [records[1]])).toEqual([['setupChanged', setups[1]]])
  expect(await found(where, [records[0]])).toEqual([])
  expect(kinds(await (await openedLab(where)).setups.get(setups[1]))).toEqual(['setupChanged'])
})

test.for([
  "text = '{}'",
  "text = '{}', sha256 = '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a', seed = 2",
  "program = 'kufe 9'",
  'seed = 3',
  'options = \'{"a":1}\'',
  "options = 'nonsense'",
  "options = '[1]'",
])('a result with %s is found and named', async (set) => {
  const { where, records, results } = await fullLab()
  tamper(where, 'results', `update results set ${set} where id = '${results[2]}'`)
  expect(await found(where)).toEqual([['resultChanged', results[2]]])
  expect(await found(where, [records[2]])).toEqual([['resultChanged', results[2]]])
  expect(await found(where, [records[0]])).toEqual([])
})

test('a changed paper is found and named', async () => {
  const { where, records } = await fullLab()
  tamper(where, 'paper_versions', `update paper_versions set content = '{"tilt":"0.1°"}'`)
  expect(await found(where)).toEqual([['paperChanged', `record/${records[0]}/runSheet`]])
  expect(await found(where, [records[1]])).toEqual([])
  const lab = await openedLab(where)
  expect(kinds(await lab.papersOf('record', records[0]))).toEqual(['paperChanged'])
})

test('a row that names one that is gone is found', async () => {
  const { where, records } = await fullLab()
  const database = new DatabaseSync(join(where, 'kufe.sqlite'), { enableForeignKeyConstraints: false })
  database.exec(`drop trigger raw_no_delete; delete from raw where sha256 = '${records[0]}'`)
  database.close()
  expect((await found(where)).map(([kind]) => kind)).toEqual(['linkBroken', 'linkBroken'])
})

test('a result made from other options than its row says is not handed out, and lists can still be read', async () => {
  const { where, results } = await fullLab()
  tamper(where, 'results', `update results set options = 'nonsense' where id = '${results[1]}'`)
  const lab = await openedLab(where)
  expect(value(await lab.results.list({})).map(({ id }) => id)).toEqual(results)
  const text = await lab.results.text(results[1])
  expect(text.ok ? [] : text.problems.map(({ kind, place }) => [kind, place.cell])).toEqual([
    ['resultChanged', results[1]],
  ])
})

test('damaged notes of a study are named', async () => {
  const { where } = await fullLab()
  const lab = await openedLab(where)
  value(await lab.studies.add({ id: 'runners', title: 'Runners', note: '', facts: {} }, change(5)))
  await lab.close()
  tamper(where, 'study_versions', "update study_versions set facts = 'nonsense'")
  const listed = await (await openedLab(where)).studies.list()
  expect(listed.ok ? [] : listed.problems.map(({ kind, place }) => [kind, place.cell])).toEqual([
    ['labDamaged', 'runners'],
  ])
})
