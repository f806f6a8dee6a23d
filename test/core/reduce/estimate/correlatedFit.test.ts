import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { correlatedFit } from '../../../../src/core/reduce/estimate/correlatedFit.ts'
import { addProducts, laggedProducts } from '../../../../src/core/reduce/estimate/laggedProducts.ts'
import { mapProducts } from '../../../../src/core/reduce/estimate/mapProducts.ts'
import { meanInflation } from '../../../../src/core/reduce/estimate/meanInflation.ts'

/** First-order autoregressive noise of unit variance. */
function noise(seed: number, rows: number, correlation: number): Float64Array {
  const random = randomFrom(seed)
  const out = new Float64Array(rows)
  let last = random.normal()
  for (let i = 0; i < rows; i++) {
    out[i] = last
    last = correlation * last + Math.sqrt(1 - correlation * correlation) * random.normal()
  }
  return out
}

/** Generalised least squares straight from its definition, with the whole inverse covariance of an AR(1). */
function byDefinition(columns: readonly Float64Array[], y: Float64Array, correlation: number): number[] {
  const rows = y.length
  const inverse = (i: number, j: number): number => {
    if (i === j) return i === 0 || i === rows - 1 ? 1 : 1 + correlation ** 2
    return Math.abs(i - j) === 1 ? -correlation : 0
  }
  const product = (a: Float64Array, b: Float64Array): number => {
    let sum = 0
    for (let i = 0; i < rows; i++) for (let j = 0; j < rows; j++) sum += a[i] * inverse(i, j) * b[j]
    return sum
  }
  const [a, b] = columns
  const [aa, ab, bb, ay, by] = [product(a, a), product(a, b), product(b, b), product(a, y), product(b, y)]
  const determinant = aa * bb - ab * ab
  return [(bb * ay - ab * by) / determinant, (aa * by - ab * ay) / determinant]
}

describe('generalised least squares with AR(1) errors', () => {
  test.for([0, 0.5, 0.9, -0.4])('equals the definition with the whole covariance matrix, ρ = %d', (correlation) => {
    const y = noise(3, 40, correlation).map((value, i) => value + 2 + Math.cos(0.3 * i))
    const columns = [new Float64Array(40).fill(1), y.map((_, i) => Math.cos(0.3 * i))]
    const fit = correlatedFit(laggedProducts([...columns, y]), correlation)
    const want = byDefinition(columns, y, correlation)
    expect(fit?.coefficients[0]).toBeCloseTo(want[0], 10)
    expect(fit?.coefficients[1]).toBeCloseTo(want[1], 10)
  })

  test('the restricted likelihood is highest near the true correlation', () => {
    const y = noise(5, 20_000, 0.7)
    const products = laggedProducts([new Float64Array(y.length).fill(1), y])
    const at = (correlation: number) => correlatedFit(products, correlation)?.logLikelihood ?? Number.NaN
    const best = [0.5, 0.6, 0.65, 0.7, 0.75, 0.8].reduce((a, b) => (at(b) > at(a) ? b : a))
    expect(best).toBe(0.7)
  })

  test('a firm belief overrules the data, a loose one leaves them alone', () => {
    const y = noise(7, 50, 0.3).map((value, i) => value + 5 * Math.sin(0.5 * i))
    const columns = [new Float64Array(50).fill(1), y.map((_, i) => Math.sin(0.5 * i)), y]
    const products = laggedProducts(columns)
    const firm = correlatedFit(products, 0.3, [undefined, { mean: 1, deviation: 1e-6 }])
    const loose = correlatedFit(products, 0.3, [undefined, { mean: 1, deviation: 1e6 }])
    expect(firm?.coefficients[1]).toBeCloseTo(1, 6)
    expect(loose?.coefficients[1]).toBeCloseTo(correlatedFit(products, 0.3)?.coefficients[1] ?? Number.NaN, 8)
  })

  test('columns that cannot be told apart give no fit, a correlation of one is refused', () => {
    const ones = new Float64Array(10).fill(1)
    expect(correlatedFit(laggedProducts([ones, ones, noise(1, 10, 0)]), 0)).toBeUndefined()
    expect(() => correlatedFit(laggedProducts([ones, ones]), 1)).toThrow(/correlation must lie between/)
    expect(() => correlatedFit(laggedProducts([ones, ones]), Number.NaN)).toThrow(RangeError)
  })
})

test('mapped products are those of the mapped columns', () => {
  fc.assert(
    fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.integer({ min: 3, max: 30 }), (factor, rows) => {
      const [a, b] = [noise(1, rows, 0.2), noise(2, rows, 0.2)]
      const mapped = mapProducts(laggedProducts([a, b]), [
        [[0, 1]],
        [
          [1, 1],
          [0, -factor],
        ],
      ])
      const direct = laggedProducts([a, b.map((value, i) => value - factor * a[i])])
      for (const matrix of ['same', 'next', 'inner'] as const) {
        mapped[matrix].forEach((value, i) => {
          expect(Math.abs(value - direct[matrix][i])).toBeLessThan(1e-10 * (1 + Math.abs(value)) * rows)
        })
      }
    }),
  )
})

test('products of stretches add up but do not join their ends', () => {
  const [a, b] = [noise(1, 10, 0), noise(2, 12, 0)]
  const apart = addProducts([laggedProducts([a]), laggedProducts([b])])
  const joined = laggedProducts([Float64Array.from([...a, ...b])])
  expect(apart.same[0]).toBeCloseTo(joined.same[0], 12)
  expect(joined.next[0] - apart.next[0]).toBeCloseTo(a[9] * b[0], 12)
})

// Exact sum of the autocorrelations of an AR(1): Anderson 1971, from memory; the digits by a computation outside this program.
test.for([
  [0.5, 100, 2.96],
  [0.9, 100, 17.20005],
  [0.9, 1000, 18.82],
  [-0.3, 50, 0.545562],
])('variance of the mean of an AR(1), ρ %d, n %d', ([correlation, rows, want]) => {
  expect(Math.abs(meanInflation(correlation, rows) - want)).toBeLessThan(1e-5)
})
