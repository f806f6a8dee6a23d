import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chiSquaredCdf,
  chiSquaredQuantile,
  chiSquaredUpper,
  fisherFCdf,
  fisherFQuantile,
  fisherFUpper,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from '../../../src/core/stats/index.ts'

const seed = 20_261_125
const standard = 'standard table of quantiles'
const gum = 'JCGM 100:2008, table G.2'
const digits = 'mpmath 1.3, 50 digits'

// Printed tables: half a unit of the last place.
test.for([
  ...[12.7062, 4.3027, 3.1824, 2.7764, 2.5706].map((want, i) => [i + 1, 0.975, want, 5e-5, standard]),
  [9, 0.975, 2.2622, 5e-5, standard],
  [10, 0.975, 2.2281, 5e-5, standard],
  [16, 0.975, 2.1199, 5e-5, standard],
  [20, 0.975, 2.086, 5e-5, standard],
  [30, 0.975, 2.0423, 5e-5, standard],
  [60, 0.975, 2.0003, 5e-5, standard],
  [120, 0.975, 1.9799, 5e-5, standard],
  [1, 0.995, 63.6567, 5e-5, standard],
  [2, 0.995, 9.9248, 5e-5, standard],
  [5, 0.995, 4.0321, 5e-5, standard],
  [10, 0.995, 3.1693, 5e-5, standard],
  [16, 0.995, 2.9208, 5e-5, standard],
  [30, 0.995, 2.75, 5e-5, standard],
  [1, 0.97725, 13.97, 5e-3, gum],
  [2, 0.97725, 4.53, 5e-3, gum],
  [3, 0.97725, 3.31, 5e-3, gum],
  [5, 0.97725, 2.65, 5e-3, gum],
  [10, 0.97725, 2.28, 5e-3, gum],
  [20, 0.97725, 2.13, 5e-3, gum],
  [50, 0.97725, 2.05, 5e-3, gum],
] as [number, number, number, number, string][])('t quantile: ν %d, p %d is %d', ([freedom, p, want, within]) => {
  expect(Math.abs(studentTQuantile(p, freedom) - want)).toBeLessThanOrEqual(within)
  expect(studentTQuantile(1 - p, freedom)).toBeCloseTo(-studentTQuantile(p, freedom), 9)
})

test.for([
  [1, 0.95, 3.841, 5e-4],
  [2, 0.95, 5.991, 5e-4],
  [3, 0.95, 7.815, 5e-4],
  [5, 0.95, 11.07, 5e-4],
  [10, 0.95, 18.307, 5e-4],
  [20, 0.95, 31.41, 5e-4],
  [30, 0.95, 43.773, 5e-4],
  [100, 0.95, 124.342, 5e-4],
  [1, 0.05, 0.0039, 5e-5],
  [5, 0.05, 1.1455, 5e-5],
  [10, 0.05, 3.9403, 5e-5],
  [20, 0.05, 10.8508, 5e-5],
  [30, 0.05, 18.4927, 5e-5],
  [5, 0.975, 12.833, 5e-4],
  [10, 0.975, 20.483, 5e-4],
  [20, 0.975, 34.17, 5e-4],
])(`χ² quantile: ν %d, p %d is %d (${standard})`, ([freedom, p, want, within]) => {
  expect(Math.abs(chiSquaredQuantile(p, freedom) - want)).toBeLessThanOrEqual(within)
})

test.for([
  [1, 1, 0.95, 161.448],
  [1, 10, 0.95, 4.965],
  [2, 10, 0.95, 4.103],
  [3, 20, 0.95, 3.098],
  [4, 20, 0.95, 2.866],
  [5, 10, 0.95, 3.326],
  [9, 40, 0.95, 2.124],
  [10, 10, 0.95, 2.978],
  [12, 60, 0.95, 1.917],
  [1, 10, 0.99, 10.044],
  [3, 20, 0.99, 4.938],
  [5, 10, 0.99, 5.636],
])(`F quantile: ν %d and %d, p %d is %d (${standard})`, ([numerator, denominator, p, want]) => {
  expect(Math.abs(fisherFQuantile(p, [numerator, denominator]) - want)).toBeLessThanOrEqual(5e-4)
})

describe(`many digits (${digits})`, () => {
  test.for([
    ['t ν 0.5, p 0.975', studentTQuantile(0.975, 0.5), 164.55767348048823],
    ['t ν 0.93, p 0.55', studentTQuantile(0.55, 0.93), 0.16076548362867515],
    ['t ν 2.5, p 0.9999', studentTQuantile(0.9999, 2.5), 34.86796932111631],
    ['t ν 9.3, p 0.76', studentTQuantile(0.76, 9.3), 0.7357967259052911],
    ['t ν 250, p 0.9999999', studentTQuantile(0.9999999, 250), 5.348699581163217],
    ['χ² ν 0.4, p 1e-3', chiSquaredQuantile(1e-3, 0.4), 1.3050961686914497e-15],
    ['Φ(−8)', normalCdf(-8), 6.220960574271784e-16],
    ['normal p 1e-12', normalQuantile(1e-12), -7.034483825301132],
    ['t cdf −2.2, ν 1e5', studentTCdf(-2.2, 1e5), 0.01390458696953037],
    ['t cdf −40, ν 1000', studentTCdf(-40, 1000), 5.2394260775866807e-210],
    ['χ² 1000 above, ν 333', chiSquaredUpper(1000, 333), 7.2810303823468905e-68],
    ['F 0.7 below, ν 1000 and 20000', fisherFCdf(0.7, [1000, 20000]), 8.605562611722366e-14],
    ['F 50 above, ν 40 and 200', fisherFUpper(50, [40, 200]), 5.937760183744191e-84],
  ] as const)('%s', ([, got, want]) => {
    expect(Math.abs(got / want - 1)).toBeLessThan(2e-13)
  })
})

describe('always', () => {
  const probability = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true })
  const freedom = fc.double({ min: 0.5, max: 5000, noNaN: true })

  test('quantile and cdf undo each other', () => {
    fc.assert(
      fc.property(probability, freedom, freedom, (p, first, second) => {
        const close = (got: number): void => expect(Math.abs(got - p)).toBeLessThan(1e-11 * p + 1e-15)
        close(studentTCdf(studentTQuantile(p, first), first))
        close(chiSquaredCdf(chiSquaredQuantile(p, first), first))
        close(fisherFCdf(fisherFQuantile(p, [first, second]), [first, second]))
        close(normalCdf(normalQuantile(p)))
      }),
      { seed, numRuns: 2000 },
    )
  })

  test('t² is F(1, ν); F(ν, ∞) nears χ²/ν; t(∞) is normal', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.51, max: 0.9999, noNaN: true }), freedom, (p, nu) => {
        expect(studentTQuantile(p, nu) ** 2 / fisherFQuantile(2 * p - 1, [1, nu])).toBeCloseTo(1, 9)
        expect((fisherFQuantile(p, [nu, 1e12]) * nu) / chiSquaredQuantile(p, nu)).toBeCloseTo(1, 7)
        expect(studentTQuantile(p, Number.POSITIVE_INFINITY)).toBe(normalQuantile(p))
      }),
      { seed, numRuns: 200 },
    )
  })
})

test('ends of the range', () => {
  expect(studentTQuantile(0, 3)).toBe(Number.NEGATIVE_INFINITY)
  expect(studentTQuantile(0.5, 3)).toBe(0)
  expect(studentTQuantile(1, 3)).toBe(Number.POSITIVE_INFINITY)
  expect(studentTCdf(Number.POSITIVE_INFINITY, 3)).toBe(1)
  expect(studentTCdf(-1e100, 1) * Math.PI * 1e100).toBeCloseTo(1, 12) // Cauchy
  expect(chiSquaredQuantile(0, 3)).toBe(0)
  expect(fisherFQuantile(1, [2, 3])).toBe(Number.POSITIVE_INFINITY)
  expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY)
})

test.for([
  ['probability NaN', () => studentTQuantile(Number.NaN, 3), 'probability must lie between 0 and 1, got NaN'],
  ['probability 1.1', () => normalQuantile(1.1), 'got 1.1'],
  ['no freedom', () => studentTQuantile(0.9, 0), 'degrees of freedom must be above zero, got 0'],
  ['freedom NaN', () => fisherFQuantile(0.9, [Number.NaN, 3]), 'got NaN, 3'],
  ['negative χ²', () => chiSquaredCdf(-1, 3), 'x must be zero or more'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
