import { describe, expect, test } from 'vitest'
import { checksum } from '../../src/store/index.ts'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

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

describe.each(engines)('records on $name', ({ place }) => {
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
})
