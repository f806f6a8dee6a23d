import { expect, test } from 'vitest'
import { findMinimum } from '../../../src/core/numeric/index.ts'

test.for([
  ['a parabola', (x: number) => (x - 0.3) ** 2, [-2, 5], 0.3],
  ['x ln x, minimum at 1/e', (x: number) => x * Math.log(x), [0.01, 3], 1 / Math.E],
  ['|x|, a kink', (x: number) => Math.abs(x - 1), [-3, 4], 1],
] as const)('%s', ([, f, range, want]) => {
  const { at, value, end } = findMinimum(f, range)
  expect(end).toBe('inside')
  expect(Math.abs(at - want)).toBeLessThan(2e-7)
  expect(value).toBe(f(at))
})

test('a function that falls to an end says so', () => {
  expect(findMinimum((x) => x, [2, 5])).toMatchObject({ end: 'atEnd', at: expect.closeTo(2, 6) })
  expect(findMinimum((x) => -x, [2, 5])).toMatchObject({ end: 'atEnd', at: expect.closeTo(5, 6) })
})

test('ends though the tolerance is finer than rounding', () => {
  expect(findMinimum((x) => (x - 1e9) ** 2, [0, 3e9], { tolerance: 1e-12 }).evaluations).toBeLessThan(120)
})

test.for([
  ['a falling range', () => findMinimum((x) => x, [1, 0]), 'must rise, got 1 to 0'],
  ['tolerance 0', () => findMinimum((x) => x, [0, 1], { tolerance: 0 }), 'got 0'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
