import { describe, expect, test } from 'vitest'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

describe.each(engines)('studies and samples on $name', ({ place }) => {
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
})
