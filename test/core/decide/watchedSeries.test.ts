import { describe, expect, test } from 'vitest'
import { type WatchedValue, watchedSeries } from '../../../src/core/decide/index.ts'

const steady = [0.2, 0.202, 0.198, 0.201, 0.199, 0.2, 0.203, 0.197, 0.2, 0.201]

const watched = (
  frictions: readonly number[],
  changes: (i: number) => Partial<WatchedValue> = () => ({}),
): WatchedValue[] =>
  frictions.map((friction, i) => ({
    record: `r${i}`,
    label: `day ${i}`,
    friction,
    day: i,
    temperature: null,
    ballSet: null,
    operator: null,
    ...changes(i),
  }))

const setup = { baseline: 10, rules: 'westernElectric', ewma: true } as const

test('a steady rig has no alarms', () => {
  expect(watchedSeries(watched(steady), setup).alarms).toEqual([])
})

test('a jump alarms at its value, with the pattern and its record; a pattern that goes on is told once', () => {
  const { alarms } = watchedSeries(watched([...steady, 0.21, 0.211, 0.212]), setup)
  const kinds = alarms.map(({ kind, record }) => `${kind} ${record}`)
  expect(kinds).toContain('beyondThree r10')
  expect(kinds.filter((kind) => kind.startsWith('weightedMean'))).toHaveLength(1)
  // Every value beyond three standard deviations is an alarm of its own.
  expect(kinds.filter((kind) => kind.startsWith('beyondThree'))).toHaveLength(3)
})

test('a step between two values is seen by the moving range', () => {
  const { chart, alarms } = watchedSeries(watched([...steady, 0.2 + 1.2 * 0.0069, 0.2 - 1.2 * 0.0069]), setup)
  expect(chart.movingRanges.at(-1)).toBeGreaterThan(chart.rangeUpper)
  expect(alarms.map(({ kind }) => kind)).toContain('movingRange')
})

describe('drift', () => {
  test('goes with the ball set where that changed', () => {
    const values = watched([...steady, ...steady.map((value) => value + 0.01)], (i) => ({
      day: i % 10,
      ballSet: i < 10 ? 'A' : 'B',
    }))
    const { drift } = watchedSeries(values, setup)
    const effect = drift?.effects.find(({ cause }) => cause === 'ball set')
    expect(effect?.value).toBeCloseTo(0.01, 12)
    expect(drift?.tests.find(({ cause }) => cause === 'ball set')?.adjusted).toBeLessThan(1e-6)
  })

  test('a cause that is not known for all, or hardly varies, is not asked', () => {
    const values = watched(steady, (i) => ({ temperature: 296 + 0.01 * i, operator: i === 3 ? null : 'MK' }))
    expect(watchedSeries(values, setup).drift?.tests.map(({ cause }) => cause)).toEqual(['day'])
  })
})

test('fewer than five values make no chart', () => {
  expect(() => watchedSeries(watched([1, 2, 3, 4]), setup)).toThrow(RangeError)
})
