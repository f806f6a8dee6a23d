import { describe, expect, test } from 'vitest'
import { chiSquaredDraw } from '../../../src/core/numeric/chiSquaredDraw.ts'
import { randomFrom } from '../../../src/core/numeric/index.ts'

const draws = 20_000

describe('chi-squared draws', () => {
  test.for([
    // Quantiles 5 %, 50 % and 95 %: standard tables (NIST/SEMATECH e-Handbook 1.3.6.7.4); 0.5, 1.3863 = 2 ln 2 is exact.
    { nu: 1, at: [0.00393, 0.4549, 3.841] },
    { nu: 2, at: [0.1026, 1.3863, 5.991] },
    { nu: 5, at: [1.1455, 4.3515, 11.07] },
    { nu: 30, at: [18.493, 29.336, 43.773] },
  ])('ν = $nu falls below the 5, 50 and 95 % quantiles as often as it should', ({ nu, at }) => {
    const random = randomFrom(7, nu)
    const values = Array.from({ length: draws }, () => chiSquaredDraw(random, nu))
    for (const [k, share] of [0.05, 0.5, 0.95].entries()) {
      const below = values.filter((value) => value < at[k]).length
      // Four standard deviations of a binomial count.
      expect(Math.abs(below - share * draws)).toBeLessThan(4 * Math.sqrt(draws * share * (1 - share)))
    }
  })

  test('mean ν and variance 2ν also where ν is not whole', () => {
    const random = randomFrom(8)
    const values = Array.from({ length: draws }, () => chiSquaredDraw(random, 3.7))
    const mean = values.reduce((sum, value) => sum + value, 0) / draws
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws - 1)
    expect(Math.abs(mean - 3.7)).toBeLessThan(4 * Math.sqrt(7.4 / draws))
    // Var(s²) ≈ (μ4 − σ⁴)/n with μ4 = 12ν² + 48ν.
    expect(Math.abs(variance - 7.4)).toBeLessThan(4 * Math.sqrt((12 * 3.7 ** 2 + 48 * 3.7 - 7.4 ** 2) / draws))
  })

  test.for([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses ν = %d', (nu) => {
    expect(() => chiSquaredDraw(randomFrom(1), nu)).toThrow('degreesOfFreedom')
  })
})
