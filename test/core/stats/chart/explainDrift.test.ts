import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { oneWayAnova } from '../../../../src/core/stats/index.ts'
import { explainDrift } from '../../../../src/core/stats/judging/index.ts'

const days = Array.from({ length: 24 }, (_, i) => i)
const sets = days.map((day) => (day < 14 ? 'set 1' : 'set 2'))
const temperature = days.map((day) => 23 + Math.sin(1.7 * day))

/** Known truth: 0.2, +0.0005 per day, +0.004 with the second set, −0.002 per kelvin. */
function series(seed: number, noise: number): number[] {
  const random = randomFrom(seed)
  return days.map(
    (day, i) =>
      0.2 + 0.0005 * day + (sets[i] === 'set 2' ? 0.004 : 0) - 0.002 * (temperature[i] - 23) + noise * random.normal(),
  )
}

const causes = {
  numbers: [
    { name: 'day', values: days },
    { name: 'temperature', values: temperature },
  ],
  kinds: [
    { name: 'ball set', values: sets },
    { name: 'operator', values: days.map(() => 'MK') },
  ],
}

test('without noise the truth comes back', () => {
  const found = explainDrift(series(1, 0), causes)
  const effect = (cause: string) => found?.effects.find((one) => one.cause === cause)
  expect(effect('day')?.value).toBeCloseTo(0.0005, 12)
  expect(effect('temperature')?.value).toBeCloseTo(-0.002, 12)
  expect(effect('ball set')).toMatchObject({ kind: 'set 2', against: 'set 1' })
  expect(effect('ball set')?.value).toBeCloseTo(0.004, 12)
  expect(found?.untold).toEqual([{ cause: 'operator', why: 'neverVaries' }])
})

test('95 % intervals hold the truth 95 times in a hundred', () => {
  let inside = 0
  const runs = 2000
  for (let seed = 0; seed < runs; seed++) {
    const found = explainDrift(series(seed, 0.002), causes)
    const effect = found?.effects.find(({ cause }) => cause === 'ball set')
    if (effect !== undefined && effect.low <= 0.004 && effect.high >= 0.004) inside++
  }
  // Two standard errors of the count are 1 %.
  expect(Math.abs(inside / runs - 0.95)).toBeLessThan(0.01)
})

test('one cause alone is an analysis of variance', () => {
  const values = series(7, 0.003)
  const found = explainDrift(values, { numbers: [], kinds: [{ name: 'ball set', values: sets }] })
  const anova = oneWayAnova([values.slice(0, 14), values.slice(14)])
  expect(found?.tests[0].f).toBeCloseTo(anova.f, 8)
  expect(found?.tests[0].p).toBeCloseTo(anova.p, 10)
})

describe('what nothing can be said about', () => {
  test('causes that vary together are not told apart', () => {
    const found = explainDrift(series(3, 0.001), {
      numbers: [],
      kinds: [
        { name: 'ball set', values: sets },
        { name: 'operator', values: sets.map((set) => (set === 'set 1' ? 'MK' : 'AB')) },
      ],
    })
    expect(found?.untold.map(({ cause, why }) => [cause, why])).toEqual(
      expect.arrayContaining([
        ['ball set', 'variesWithOthers'],
        ['operator', 'variesWithOthers'],
      ]),
    )
    expect(found?.effects).toEqual([])
  })

  test('too few values for their causes explain nothing', () => {
    expect(explainDrift([1, 2, 3, 4], { numbers: [{ name: 'day', values: [1, 2, 3, 4] }], kinds: [] })).toBeUndefined()
  })
})
