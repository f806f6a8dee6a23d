import { expect, test } from 'vitest'
import { hampel } from '../../../src/core/stats/index.ts'
import { examples } from './examples.ts'

test('flags the two that stand out and nothing else, windows cut at the ends (computed independently)', () => {
  const { flagged, medians, scaledMads } = hampel(examples.hampel.x, { halfWindow: 3, threshold: 3 })
  expect(flagged).toEqual([4, 9])
  expect([medians[4], medians[9]]).toEqual([1.1, 1])
  expect(scaledMads[4]).toBeCloseTo(0.14826, 12)
  expect(scaledMads[9]).toBeCloseTo(0.14826, 12)
})

test('a straight line is left alone', () => {
  const line = Array.from({ length: 30 }, (_, i) => i)
  expect(hampel(line, { halfWindow: 3, threshold: 3 }).flagged).toEqual([])
})

test.for([
  ['half window 0', { halfWindow: 0, threshold: 3 }, 'got 0'],
  ['threshold NaN', { halfWindow: 3, threshold: Number.NaN }, 'got NaN'],
] as const)('refuses %s', ([, options, message]) => {
  expect(() => hampel([1, 2, 3], options)).toThrow(RangeError)
  expect(() => hampel([1, 2, 3], options)).toThrow(message)
})
