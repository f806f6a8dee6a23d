import fc from 'fast-check'
import { expect, test } from 'vitest'
import { nthSmallest } from '../../../src/core/numeric/index.ts'

// Sorting is the outside truth; typed arrays sort NaN behind all numbers.
test('is what stands at that place of the sorted values', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double()), { minLength: 1, maxLength: 200 }),
      fc.nat(),
      (list, pick) => {
        const n = pick % list.length
        const sorted = Float64Array.from(list).sort()
        // Two zeros of unlike sign are one value.
        expect(nthSmallest(Float64Array.from(list), n) + 0).toBe(sorted[n] + 0)
      },
    ),
  )
})

test('only one of many equal values, and a place beyond the end', () => {
  expect(nthSmallest(new Float64Array(10_000).fill(2), 5_000)).toBe(2)
  expect(() => nthSmallest(new Float64Array(3), 3)).toThrow(RangeError)
  expect(() => nthSmallest(new Float64Array(0), 0)).toThrow(RangeError)
  expect(() => nthSmallest(new Float64Array(3), Number.NaN)).toThrow(RangeError)
})
