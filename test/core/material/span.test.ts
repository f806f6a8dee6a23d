import fc from 'fast-check'
import { expect, test } from 'vitest'
import { within } from '../../../src/core/material/span.ts'

test('the ends belong to a span also after a unit was turned into SI; NaN and what lies beyond do not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1e6, noNaN: true }),
      fc.double({ min: 1.001, max: 10, noNaN: true }),
      (low, ratio) => {
        const span = { low, high: low * ratio }
        for (const end of [span.low, span.high]) {
          expect(within(end * 1e-6 * 1e6, span)).toBe(true)
          expect(within((end / 3) * 3, span)).toBe(true)
        }
        expect(within(low * (1 - 1e-9), span)).toBe(false)
        expect(within(span.high * (1 + 1e-9), span)).toBe(false)
      },
    ),
  )
  expect(within(Number.NaN, { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY })).toBe(false)
  expect(within(-Number.MIN_VALUE, { low: 0, high: 1 })).toBe(false)
})
