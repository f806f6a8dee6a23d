import fc from 'fast-check'
import { expect, test } from 'vitest'
import { compensatedSum } from '../../../src/core/numeric/index.ts'

test.for([
  ['Neumaier’s example', [1, 1e100, 1, -1e100], 2],
  ['a tenth ten times', Array.from({ length: 10 }, () => 0.1), 1],
  ['nothing', [], 0],
  ['infinite', [1, Number.POSITIVE_INFINITY, 2], Number.POSITIVE_INFINITY],
] as const)('%s', ([, values, want]) => expect(compensatedSum(values)).toBe(want))

test('not a number stays not a number', () => expect(compensatedSum([1, Number.NaN])).toBeNaN())

test('sums of multiples of 2^−40 are as exact as in whole numbers, in any order', () => {
  const part = fc.maxSafeInteger()
  fc.assert(
    fc.property(fc.array(part, { maxLength: 50 }), (parts) => {
      const exact = Number(parts.reduce((sum, value) => sum + BigInt(value), 0n)) * 2 ** -40
      const values = parts.map((value) => value * 2 ** -40)
      expect(compensatedSum(values)).toBe(exact)
      expect(compensatedSum(values.toReversed())).toBe(exact)
    }),
  )
})
