import { expect, test } from 'vitest'
import { studentizedRangeCdf, studentizedRangeQuantile, studentTCdf } from '../../../src/core/stats/index.ts'

test.for([
  [2, 5, 0.95, 3.635],
  [3, 5, 0.95, 4.602],
  [3, 10, 0.95, 3.877],
  [4, 10, 0.95, 4.327],
  [4, 20, 0.95, 3.958],
  [5, 20, 0.95, 4.232],
  [3, 24, 0.95, 3.532],
  [5, 30, 0.95, 4.102],
  [10, 60, 0.95, 4.646],
  [3, 10, 0.99, 5.27],
  [5, 20, 0.99, 5.293],
])('quantile of %d groups, ν %d at %d: %d (standard table)', ([groups, degreesOfFreedom, p, want]) => {
  const setting = { groups, degreesOfFreedom }
  const got = studentizedRangeQuantile(p, setting)
  expect(Math.abs(got - want)).toBeLessThan(0.001)
  expect(Math.abs(studentizedRangeCdf(got, setting) - p)).toBeLessThan(1e-9)
})

test('two groups are Student’s t: P(q ≤ √2 t) = P(|t| ≤ t)', () => {
  for (const q of [0.3, 1, 4]) {
    for (const degreesOfFreedom of [0.5, 3, 1000]) {
      const want = 2 * studentTCdf(q / Math.SQRT2, degreesOfFreedom) - 1
      expect(studentizedRangeCdf(q, { groups: 2, degreesOfFreedom })).toBeCloseTo(want, 12)
    }
  }
})

test('ends, a known deviation, and what is refused', () => {
  const usual = { groups: 3, degreesOfFreedom: 10 }
  expect(studentizedRangeCdf(0, usual)).toBe(0)
  expect(studentizedRangeCdf(Number.POSITIVE_INFINITY, usual)).toBe(1)
  expect(studentizedRangeQuantile(0, usual)).toBe(0)
  expect(studentizedRangeQuantile(1, usual)).toBe(Number.POSITIVE_INFINITY)
  const known = { groups: 3, degreesOfFreedom: Number.POSITIVE_INFINITY }
  expect(Math.abs(studentizedRangeQuantile(0.95, known) - 3.314)).toBeLessThan(0.001) // standard table, ν ∞
  expect(() => studentizedRangeCdf(1, { ...usual, groups: 1 })).toThrow('groups must be a whole number from 2, got 1')
  expect(() => studentizedRangeCdf(Number.NaN, usual)).toThrow('got NaN')
  expect(() => studentizedRangeCdf(1, { ...usual, degreesOfFreedom: 0 })).toThrow('got 0')
})
