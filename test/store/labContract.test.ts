import { describe, expect, test } from 'vitest'
import { change, engines, freshLab, openedLab, rawBytes, temporaryFolder, value } from './engines.ts'

const setupText = 'rig:\n  name: Rig 1 # the one at the window\n'

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
