import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cosineSine } from '../../../src/core/numeric/index.ts'

const out = new Float64Array(2)

// The language's own functions are the outside truth.
test('is what Math.cos and Math.sin give', () => {
  const anywhere = fc.oneof(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.double({ min: -1e7, max: 1e7, noNaN: true }),
    fc.integer({ min: -2_000_000, max: 2_000_000 }).map((quarters) => (quarters * Math.PI) / 2),
  )
  fc.assert(
    fc.property(anywhere, (angle) => {
      cosineSine(angle, out)
      expect(Math.abs(out[0] - Math.cos(angle))).toBeLessThan(2 ** -52)
      expect(Math.abs(out[1] - Math.sin(angle))).toBeLessThan(2 ** -52)
    }),
    { numRuns: 20_000 },
  )
})

test.for([Number.NaN, Number.POSITIVE_INFINITY])('of %d is NaN', (angle) => {
  cosineSine(angle, out)
  expect([...out]).toEqual([Number.NaN, Number.NaN])
})
