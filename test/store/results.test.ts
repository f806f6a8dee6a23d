import { describe, expect, test } from 'vitest'
import type { Origin } from '../../src/core/terms/index.ts'
import { checksum, type NewResult } from '../../src/store/index.ts'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

/** A lab with two records and a setup, and what a result of the first may come from. */
async function labWithRecords(where: string) {
  const lab = await freshLab(where)
  const { setup } = value(await lab.setups.add('rig: one\n', change(1)))
  const batch = [1, 2].map((number) => ({ bytes: rawBytes(number), name: `${number}.csv` }))
  const [first, second] = value(await lab.records.add(batch, change(2))).map(({ record }) => record.id)
  const origin: Origin = {
    raw: first,
    setup: setup.sha256,
    options: { seed: 7, bandDraws: 1000, nested: { b: [1, null, 'x'], a: true } },
    program: 'kufe 0.1.0',
    seed: 7,
  }
  return { lab, origin, second }
}

const text = '{\n  "points": [1e-7, 0.1],\n  "µ": "µ"\n}\n'

describe.each(engines)('results on $name', ({ place }) => {
  test('are kept byte for byte with all that they were made from', async () => {
    const { lab, origin } = await labWithRecords(await place())
    const [{ result, isNew }] = value(await lab.results.add([{ kind: 'reduction', origin, text }], change(3, 'asked')))
    expect(isNew).toBe(true)
    expect(result).toMatchObject({ kind: 'reduction', origin, sha256: checksum(text), change: change(3, 'asked') })
    expect(value(await lab.results.text(result.id))).toBe(text)
    expect(value(await lab.results.get(result.id))).toEqual(result)
  })

  test('are recognised when they come again, whatever the order of the options', async () => {
    const { lab, origin } = await labWithRecords(await place())
    const first: NewResult = { kind: 'fit', origin, text }
    const { options } = origin
    const turned = Object.fromEntries(Object.entries(options).reverse())
    const added = value(await lab.results.add([first, { ...first, origin: { ...origin, options: turned } }], change(3)))
    expect(added.map(({ isNew }) => isNew)).toEqual([true, false])
    expect(value(await lab.results.add([first], change(4)))).toEqual([{ ...added[0], isNew: false }])
  })

  test('of the same origin must be the same bytes', async () => {
    const { lab, origin } = await labWithRecords(await place())
    const first: NewResult = { kind: 'reduction', origin, text }
    value(await lab.results.add([first], change(3)))
    const other = { ...first, text: text.replace('0.1', '0.2') }
    expect(kinds(await lab.results.add([{ ...first, kind: 'fit' }, other], change(4)))).toEqual(['resultDiffers'])
    expect(value(await lab.results.list())).toHaveLength(1)
  })

  test('of another program, seed, option, setup or record stand beside the first', async () => {
    const { lab, origin, second } = await labWithRecords(await place())
    const { setup } = value(await lab.setups.add('rig: two\n', change(3)))
    const origins: Origin[] = [
      origin,
      { ...origin, program: 'kufe 0.2.0' },
      { ...origin, seed: 8 },
      { ...origin, options: {} },
      { ...origin, setup: setup.sha256 },
      { ...origin, raw: second },
    ]
    value(
      await lab.results.add(
        origins.map((origin) => ({ kind: 'reduction', origin, text })),
        change(4),
      ),
    )
    value(await lab.results.add([{ kind: 'fit', origin, text }], change(5)))
    const list = async (filter: Parameters<typeof lab.results.list>[0]) => value(await lab.results.list(filter))
    expect((await list({})).map((result) => result.origin)).toEqual([...origins, origin])
    expect((await list({ kind: 'fit' })).map((result) => result.kind)).toEqual(['fit'])
    expect((await list({ record: second })).map((result) => result.origin)).toEqual([{ ...origin, raw: second }])
    const [, next] = await list({ limit: 2 })
    expect((await list({ after: next.change.number, limit: 1 })).map((result) => result.origin)).toEqual([origins[2]])
  })

  test('name only bytes and setups that the lab has', async () => {
    const { lab, origin } = await labWithRecords(await place())
    const none = '0'.repeat(64)
    for (const wrong of [{ raw: none }, { setup: none }]) {
      const result: NewResult = { kind: 'reduction', origin: { ...origin, ...wrong }, text }
      expect(kinds(await lab.results.add([result], change(3)))).toEqual(['notThere'])
    }
    expect(kinds(await lab.results.get(none))).toEqual(['notThere'])
    expect(kinds(await lab.results.text(none))).toEqual(['notThere'])
    expect(value(await lab.history.list({ kind: 'result' }))).toEqual([])
  })

  test('with an origin that JSON cannot hold are a mistake of ours', async () => {
    const { lab, origin } = await labWithRecords(await place())
    for (const wrong of [{ seed: 0.5 }, { seed: 2 ** 53 }, { options: { limit: Number.NaN } }]) {
      const result: NewResult = { kind: 'reduction', origin: { ...origin, ...wrong }, text }
      await expect(lab.results.add([result], change(3))).rejects.toThrow(RangeError)
    }
  })
})
