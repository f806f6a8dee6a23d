import fc from 'fast-check'
import { expect, test } from 'vitest'
import { median, percentile, percentileOfSorted } from '../../../src/core/numeric/index.ts'

// By hand from the positions of Hyndman & Fan 1996, table 1: (n − 1)p + 1 and (n + 1/3)p + 1/3.
test.for([
  ['type 7', 7, 0.25, 1.75],
  ['type 7', 7, 0.9, 3.7],
  ['type 8', 8, 0.25, 1 + 5 / 12],
  ['type 8', 8, 0.5, 2.5],
  ['type 8', 8, 0.75, 3 + 7 / 12],
  ['type 8 at the end', 8, 0.99, 4],
  ['type 8 at the start', 8, 0.01, 1],
] as const)('%s of 1 2 3 4 at share %d %d', ([, type, share, want]) => {
  expect(percentile([4, 1, 3, 2], share, type)).toBeCloseTo(want, 14)
})

test('lies between the ends and rises with the share', () => {
  const values = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 30 })
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(values, share, share, (list, one, other) => {
      const low = percentile(list, Math.min(one, other))
      const high = percentile(list, Math.max(one, other))
      expect(high).toBeGreaterThanOrEqual(low)
      expect(low).toBeGreaterThanOrEqual(Math.min(...list))
      expect(high).toBeLessThanOrEqual(Math.max(...list))
    }),
  )
})

test('median and one value', () => {
  expect(median([5, 1, 3])).toBe(3)
  expect(median([4, 1, 3, 2])).toBe(2.5)
  expect(percentileOfSorted([7], 0.3)).toBe(7)
})

test.for([
  ['nothing', () => percentile([], 0.5), 'at least one value'],
  ['share NaN', () => percentile([1], Number.NaN), 'got NaN'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
