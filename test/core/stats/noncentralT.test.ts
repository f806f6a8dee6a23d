import fc from 'fast-check'
import { expect, test } from 'vitest'
import { noncentralTCdf, studentTCdf } from '../../../src/core/stats/index.ts'

// The first two to 8 printed digits; the others by 30-digit quadrature (mpmath 1.3).
test.for([
  [2, 10, 1, 0.80761156, 1e-8],
  [1.5, 20, 2, 0.30676408, 1e-8],
  [1.5, 20, 2, 0.30676408350380424, 1e-12],
  [-1, 3, 0.5, 0.09212120981435937, 1e-12],
  [30, 2, 5, 0.971585442873339, 1e-12],
  [3, 400, 2.8, 0.5780918979144865, 1e-12],
  [12, 5, 10, 0.6248671867536252, 1e-12],
  [-4, 12, -3, 0.23906688556035463, 1e-12],
])('t %d, ν %d, δ %d: %d', ([t, degreesOfFreedom, noncentrality, want, within]) => {
  expect(Math.abs(noncentralTCdf(t, { degreesOfFreedom, noncentrality }) - want)).toBeLessThan(within)
})

const freedom = fc.double({ min: 0.5, max: 2000, noNaN: true })
const shift = fc.double({ min: -8, max: 8, noNaN: true })

test('without noncentrality it is Student’s t', () => {
  fc.assert(
    fc.property(shift, freedom, (t, degreesOfFreedom) => {
      const got = noncentralTCdf(t, { degreesOfFreedom, noncentrality: 0 })
      expect(Math.abs(got - studentTCdf(t, degreesOfFreedom))).toBeLessThan(1e-12)
    }),
  )
})

test('turned round: P(T ≤ t; δ) + P(T ≤ −t; −δ) = 1', () => {
  fc.assert(
    fc.property(shift, freedom, shift, (t, degreesOfFreedom, noncentrality) => {
      const one = noncentralTCdf(t, { degreesOfFreedom, noncentrality })
      const other = noncentralTCdf(-t, { degreesOfFreedom, noncentrality: -noncentrality })
      expect(Math.abs(one + other - 1)).toBeLessThan(1e-12)
    }),
  )
})

test('ends, and what is refused', () => {
  const usual = { degreesOfFreedom: 5, noncentrality: 1 }
  expect(noncentralTCdf(Number.POSITIVE_INFINITY, usual)).toBeCloseTo(1, 12)
  expect(noncentralTCdf(Number.NEGATIVE_INFINITY, usual)).toBe(0)
  expect(() => noncentralTCdf(Number.NaN, usual)).toThrow(RangeError)
  expect(() => noncentralTCdf(1, { ...usual, degreesOfFreedom: 0 })).toThrow('above zero and finite, got 0')
  expect(() => noncentralTCdf(1, { ...usual, noncentrality: Number.NaN })).toThrow('noncentrality finite')
})
