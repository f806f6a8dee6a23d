import { describe, expect, test } from 'vitest'
import { checksum } from '../../src/store/index.ts'
import { change, engines, freshLab, kinds, openedLab, rawBytes, temporaryFolder, value } from './engines.ts'

const setupText = 'rig:\n  name: Rig 1 # the one at the window\n'

/** Bytes whose ids begin with the same four digits. */
function twoOfOneBeginning(): [Uint8Array, Uint8Array] {
  const seen = new Map<string, Uint8Array>()
  for (let length = 100; ; length++) {
    const bytes = rawBytes(1, length)
    const beginning = checksum(bytes).slice(0, 4)
    const twin = seen.get(beginning)
    if (twin !== undefined) return [twin, bytes]
    seen.set(beginning, bytes)
  }
}

describe.each(engines)('a lab on $name', ({ place }) => {
  test('says what it is, and still does when opened again', async () => {
    const where = await place()
    const lab = await freshLab(where)
    const about = value(await lab.about.list())
    expect(about).toMatchObject([
      { id: 'workshop', title: 'Lacquer workshop (invented)', version: 1, supersedes: null },
    ])
    await lab.close()
    expect(value(await (await openedLab(where)).about.list())).toEqual(about)
  })

  test('keeps the bytes of a record as they came', async () => {
    const lab = await freshLab(await place())
    const bytes = rawBytes(1, 100_000)
    const [{ record, isNew }] = value(await lab.records.add([{ bytes, name: 'one.csv' }], change(1)))
    expect({ isNew, id: record.id, size: record.size }).toEqual({ isNew: true, id: checksum(bytes), size: 100_000 })
    expect(value(await lab.records.bytes(record.id))).toEqual(bytes)
  })

  test.for([0, 1, 1 << 22, (1 << 22) + 1])('keeps %i bytes that come piece by piece', async (length) => {
    const lab = await freshLab(await place())
    const bytes = rawBytes(2, length)
    async function* pieces(): AsyncGenerator<Uint8Array> {
      for (let at = 0; at < length; at += 1_000_003) yield bytes.subarray(at, at + 1_000_003)
    }
    const [{ record }] = value(await lab.records.add([{ bytes: pieces(), name: 'long.csv' }], change(1)))
    expect([record.id, record.size]).toEqual([checksum(bytes), length])
    expect(Buffer.compare(value(await lab.records.bytes(record.id)), bytes)).toBe(0)
  })

  test('recognises bytes that it has, within one call and in a later one', async () => {
    const lab = await freshLab(await place())
    const first = { bytes: rawBytes(1), name: 'one.csv', ballSet: 'steel 4' }
    const added = value(await lab.records.add([first, { ...first, name: 'copy.csv' }], change(1)))
    expect(added.map(({ isNew }) => isNew)).toEqual([true, false])
    const again = value(await lab.records.add([{ bytes: [rawBytes(1)], name: 'later.csv' }], change(2)))
    expect(again).toEqual([{ record: added[0].record, isNew: false }])
    expect(value(await lab.records.list())).toEqual([added[0].record])
    expect(value(await lab.history.list({ kind: 'record' }))).toHaveLength(1)
  })

  test('keeps a record with what people say about it, and corrects that by a version', async () => {
    const lab = await freshLab(await place())
    value(await lab.studies.add({ id: 'runners', title: 'Drawer runners' }, change(1)))
    value(await lab.samples.add({ id: 'lacquer-a', title: 'Lacquer A', facts: { batch: 7 } }, change(2)))
    const { setup } = value(await lab.setups.add(setupText, change(3)))
    const facts = {
      study: 'runners',
      sample: 'lacquer-a',
      replicate: 2,
      mountedBy: 'Ada',
      ballSet: 'steel 4',
      day: '2026-11-25',
    }
    const whole = { name: '../ä\n.csv', ...facts, setup: setup.sha256 }
    const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), ...whole }], change(4)))
    expect(record).toMatchObject({ ...whole, version: 1, supersedes: null, added: change(4), change: change(4) })

    const correction = { ...change(5, 'counted wrongly'), supersedes: 1 }
    const corrected = value(await lab.records.correct(record.id, { replicate: 3, ballSet: null }, correction))
    expect(corrected).toMatchObject({
      ...whole,
      replicate: 3,
      ballSet: null,
      version: 2,
      supersedes: 1,
      added: change(4),
    })
    expect(value(await lab.records.versions(record.id))).toEqual([record, corrected])
    expect(value(await lab.records.list())).toEqual([corrected])
    expect(value(await lab.history.list({ kind: 'record', id: record.id }))).toMatchObject([
      { what: 'created', version: 1, change: change(4) },
      { what: 'corrected', version: 2, change: change(5, 'counted wrongly') },
    ])
    expect(value(await lab.records.bytes(record.id))).toEqual(rawBytes(1))
  })

  test('takes a correction only from somebody who saw the latest version, with a reason', async () => {
    const lab = await freshLab(await place())
    value(await lab.samples.add({ id: 'oat-a', title: 'Oat drink A' }, change(1)))
    const correction = { ...change(2, 'spelling'), supersedes: 1 }
    const second = value(await lab.samples.correct('oat-a', { title: 'Oat drink A, chilled' }, correction))
    expect(second).toMatchObject({ version: 2, supersedes: 1, title: 'Oat drink A, chilled' })
    expect(kinds(await lab.samples.correct('oat-a', { title: 'X' }, correction))).toEqual(['changedMeanwhile'])
    expect(kinds(await lab.samples.correct('oat-a', {}, { ...change(3, ' '), supersedes: 2 }))).toEqual(['notUsable'])
    expect(value(await lab.samples.versions('oat-a')).map(({ version }) => version)).toEqual([1, 2])
    expect(value(await lab.samples.list())).toEqual([second])
  })

  test('keeps all of a batch or none', async () => {
    const lab = await freshLab(await place())
    const batch = [
      { bytes: rawBytes(1), name: 'one.csv' },
      { bytes: rawBytes(2), name: 'two.csv', study: 'nobody-made' },
    ]
    expect(kinds(await lab.records.add(batch, change(1)))).toEqual(['notThere'])
    expect(value(await lab.records.list())).toEqual([])
    expect(kinds(await lab.records.bytes(checksum(rawBytes(1))))).toEqual(['notThere'])
    expect(value(await lab.check()).problems).toEqual([])
  })

  test('lists records in the order of adding, by study, by sample and in pages', async () => {
    const lab = await freshLab(await place())
    for (const id of ['b', 'a', 'c-1']) value(await lab.samples.add({ id, title: id }, change(1)))
    expect(value(await lab.samples.list()).map(({ id }) => id)).toEqual(['a', 'b', 'c-1'])
    value(await lab.studies.add({ id: 's', title: 'S' }, change(1)))
    const add = (number: number) => ({
      bytes: rawBytes(number),
      name: `${number}.csv`,
      sample: number % 2 ? 'a' : 'b',
      study: number > 4 ? 's' : null,
    })
    value(await lab.records.add([1, 2, 3].map(add), change(2)))
    value(await lab.records.add([4, 5, 6].map(add), change(3)))
    const names = async (filter: Parameters<typeof lab.records.list>[0]) =>
      value(await lab.records.list(filter)).map(({ name }) => name)
    expect(await names({})).toEqual(['1.csv', '2.csv', '3.csv', '4.csv', '5.csv', '6.csv'])
    expect(await names({ sample: 'a' })).toEqual(['1.csv', '3.csv', '5.csv'])
    expect(await names({ study: 's', sample: 'b' })).toEqual(['6.csv'])
    const page = value(await lab.records.list({ limit: 2 }))
    expect(await names({ after: page[1].added.number, limit: 2 })).toEqual(['3.csv', '4.csv'])
  })

  test('finds a record by the beginning of its id', async () => {
    const lab = await freshLab(await place())
    const twins = twoOfOneBeginning()
    const batch = [...twins, rawBytes(0)].map((bytes, i) => ({ bytes, name: `${i}` }))
    const ids = value(await lab.records.add(batch, change(1))).map(({ record }) => record.id)
    expect(value(await lab.records.get(ids[1])).name).toBe('1')
    expect(value(await lab.records.get(ids[2].slice(0, 4))).name).toBe('2')
    expect(kinds(await lab.records.get(ids[0].slice(0, 4)))).toEqual(['notUnique'])
    for (const id of ['', 'abc', ids[2].slice(0, 3), 'zzzz', '%%%%', 'ffffffffffff', ids[2].toUpperCase()]) {
      expect(kinds(await lab.records.get(id)), id).toEqual(['notThere'])
    }
  })

  test('keeps a setup as it was written, once', async () => {
    const lab = await freshLab(await place())
    const first = value(await lab.setups.add(setupText, change(1)))
    expect(first).toMatchObject({
      isNew: true,
      setup: { sha256: checksum(setupText), text: setupText, change: change(1) },
    })
    expect(value(await lab.setups.add(setupText, change(2)))).toEqual({ ...first, isNew: false })
    expect(value(await lab.setups.add(`${setupText}\r\n`, change(2))).isNew).toBe(true)
    expect(value(await lab.setups.get(checksum(setupText)))).toEqual(first.setup)
    expect(value(await lab.setups.list())).toEqual([checksum(setupText), checksum(`${setupText}\r\n`)])
    expect(kinds(await lab.setups.get('0'.repeat(64)))).toEqual(['notThere'])
  })

  test('keeps columns until others take their place', async () => {
    const lab = await freshLab(await place())
    const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    const files = {
      raw: record.id,
      reading: 'guessed',
      rows: 9,
      program: 'kufe 0.1.0',
      parquet: rawBytes(3),
      pyramid: rawBytes(4),
    }
    expect(value(await lab.columns.get(record.id, 'guessed'))).toBeUndefined()
    expect(value(await lab.columns.put([files, { ...files, reading: 'told', rows: 8 }]))).toBe(2)
    expect(value(await lab.columns.get(record.id, 'guessed'))).toEqual(files)
    value(await lab.columns.put([{ ...files, program: 'kufe 0.2.0', parquet: rawBytes(5) }]))
    expect(value(await lab.columns.get(record.id, 'guessed'))).toEqual({
      ...files,
      program: 'kufe 0.2.0',
      parquet: rawBytes(5),
    })
    expect(value(await lab.columns.get(record.id, 'told'))?.rows).toBe(8)
    expect(kinds(await lab.columns.put([{ ...files, raw: '0'.repeat(64) }]))).toEqual(['notThere'])
  })

  test('counts the history by one, over everything', async () => {
    const lab = await freshLab(await place())
    value(await lab.studies.add({ id: 's', title: 'S' }, change(1)))
    value(await lab.setups.add(setupText, change(2)))
    value(
      await lab.records.add(
        [1, 2, 3].map((number) => ({ bytes: rawBytes(number), name: 'x' })),
        change(3),
      ),
    )
    await lab.records.add([{ bytes: rawBytes(4), name: 'x', study: 'none' }], change(4))
    value(await lab.studies.correct('s', { note: 'n' }, { ...change(5, 'why not'), supersedes: 1 }))
    const all = value(await lab.history.list())
    expect(all.map((entry) => entry.change.number)).toEqual([1, 2, 3, 4, 5, 6, 7])
    expect(all.map(({ what, kind }) => `${what} ${kind}`)).toEqual([
      'created lab',
      'created study',
      'created setup',
      ...Array(3).fill('created record'),
      'corrected study',
    ])
    expect(value(await lab.history.list({ after: 2, limit: 2 }))).toEqual(all.slice(2, 4))
  })

  test.for([
    ['an id with blanks', 'Lacquer A', 'x'],
    ['an id that is a path', '../a', 'x'],
    ['an empty id', '', 'x'],
    ['an id that ends in a hyphen', 'a-', 'x'],
    ['an id of 65 letters', 'a'.repeat(65), 'x'],
    ['NUL in a title', 'a', 'x\0y'],
    ['half a surrogate pair in a title', 'a', '\ud83d'],
  ])('refuses %s', async ([, id, title]) => {
    const lab = await freshLab(await place())
    expect(kinds(await lab.samples.add({ id, title }, change(1)))).toEqual(['notUsable'])
    expect(value(await lab.samples.list())).toEqual([])
  })

  test('refuses an id that is taken, a day that is none, and things it does not have', async () => {
    const lab = await freshLab(await place())
    value(await lab.samples.add({ id: 'a', title: 'A' }, change(1)))
    expect(kinds(await lab.samples.add({ id: 'a', title: 'Another' }, change(2)))).toEqual(['alreadyThere'])
    const record = { bytes: rawBytes(1), name: 'one.csv' }
    expect(kinds(await lab.records.add([{ ...record, day: '25.11.2026' }], change(1)))).toEqual(['notUsable'])
    expect(kinds(await lab.records.add([{ ...record, sample: 'b' }], change(1)))).toEqual(['notThere'])
    expect(kinds(await lab.records.add([{ ...record, setup: '0'.repeat(64) }], change(1)))).toEqual(['notThere'])
    expect(kinds(await lab.samples.get('b'))).toEqual(['notThere'])
    expect(kinds(await lab.samples.versions('b'))).toEqual(['notThere'])
    expect(kinds(await lab.records.versions('0'.repeat(64)))).toEqual(['notThere'])
  })

  test('throws for mistakes of ours', async () => {
    const lab = await freshLab(await place())
    const record = { bytes: rawBytes(1), name: 'one.csv' }
    await expect(lab.records.add([record], { ...change(1), at: '25.11.2026' })).rejects.toThrow(RangeError)
    await expect(lab.records.add([record], { ...change(1), who: '' })).rejects.toThrow(RangeError)
    await expect(lab.records.add([{ ...record, replicate: Number.NaN }], change(1))).rejects.toThrow(RangeError)
    expect(value(await lab.records.list())).toEqual([])
  })

  test('is copied to a backup that is a lab itself', async () => {
    const lab = await freshLab(await place())
    value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    const to = `${temporaryFolder()}/copy`
    expect(value(await lab.backup(to))).toMatchObject({ raws: 1, bytes: 200, problems: [] })
    const copy = await openedLab(to)
    expect(value(await copy.records.list())).toEqual(value(await lab.records.list()))
    expect(value(await copy.history.list())).toEqual(value(await lab.history.list()))
  })
})
