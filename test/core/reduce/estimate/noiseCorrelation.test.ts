import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { correlatedFit } from '../../../../src/core/reduce/estimate/correlatedFit.ts'
import { laggedProducts } from '../../../../src/core/reduce/estimate/laggedProducts.ts'
import { noiseCorrelation } from '../../../../src/core/reduce/estimate/noiseCorrelation.ts'

function step(seed: number, rows: number, correlation: number): (correlation: number) => number {
  const random = randomFrom(seed)
  const y = new Float64Array(rows)
  let last = random.normal()
  for (let i = 0; i < rows; i++) {
    y[i] = last
    last = correlation * last + Math.sqrt(1 - correlation ** 2) * random.normal()
  }
  const products = laggedProducts([new Float64Array(rows).fill(1), y])
  return (at) => correlatedFit(products, at)?.logLikelihood ?? Number.NaN
}

describe('correlation learned from all steps', () => {
  test.for([0, 0.5, 0.9])('twelve steps of 80 rows with ρ = %d agree on it', (correlation) => {
    const { centre, spread, steps } = noiseCorrelation(
      Array.from({ length: 12 }, (_, i) => step(100 + i, 80, correlation)),
    )
    // Standard error of z = atanh ρ from 960 rows is about 1/√960/√(1 − ρ²); four of them.
    expect(Math.abs(Math.atanh(centre) - Math.atanh(correlation))).toBeLessThan(
      4 / Math.sqrt(960 * (1 - correlation ** 2)),
    )
    expect(spread).toBe(0.02)
    for (const one of steps) expect(Math.abs(one.correlation - centre)).toBeLessThan(0.05)
  })

  test('steps that differ keep their own', () => {
    const { spread, steps } = noiseCorrelation([
      ...Array.from({ length: 5 }, (_, i) => step(i, 400, 0.1)),
      ...Array.from({ length: 5 }, (_, i) => step(50 + i, 400, 0.9)),
    ])
    expect(spread).toBeGreaterThan(0.2)
    for (const one of steps.slice(0, 5)) expect(one.correlation).toBeLessThan(0.35)
    for (const one of steps.slice(5)) expect(one.correlation).toBeGreaterThan(0.7)
  })
})
