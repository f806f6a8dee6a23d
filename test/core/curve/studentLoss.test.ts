import { describe, expect, test } from 'vitest'
import type { Observations } from '../../../src/core/curve/curvePoint.ts'
import { extraScatter } from '../../../src/core/curve/extraScatter.ts'
import { effectiveUncertainty, spreadOf, takeRoots, weightedSquares } from '../../../src/core/curve/studentLoss.ts'
import { chiSquaredDraw, randomFrom } from '../../../src/core/numeric/index.ts'

const observations = (own: number[], nu: number): Observations => ({
  lnSpeeds: Float64Array.from(own, (_, i) => i),
  lnFriction: new Float64Array(own.length),
  own: Float64Array.from(own),
  freedom: new Float64Array(own.length).fill(nu),
})

const lossOf = (own: number[], nu: number, residuals: number[]): number => {
  const roots = Float64Array.from(residuals)
  takeRoots(spreadOf(observations(own, nu), 0), roots)
  return roots.reduce((sum, e) => sum + e * e, 0)
}

describe('loss of a residual', () => {
  test('many degrees of freedom: r²/u²', () => {
    expect(lossOf([0.01], 1e9, [0.03])).toBeCloseTo(9, 6)
  })

  test('few: (ν − 1) ln(1 + r²/(ν u²))', () => {
    expect(lossOf([0.01], 3, [0.03])).toBeCloseTo(2 * Math.log(1 + 9 / 3), 12)
    // Across the place where the root changes from its series to the logarithm.
    expect(lossOf([0.01], 3, [1.5e-6]) / lossOf([0.01], 3, [2e-6])).toBeCloseTo(2.25 / 4, 8)
  })

  test('the slope of the root is its derivative', () => {
    for (const r of [-0.05, -1e-5, 1e-9, 0.002, 0.04]) {
      const spread = spreadOf(observations([0.01], 4), 0.003)
      const jacobian = Float64Array.of(1)
      takeRoots(spread, Float64Array.of(r), jacobian)
      const [above, below] = [Float64Array.of(r + 1e-8), Float64Array.of(r - 1e-8)]
      takeRoots(spread, above)
      takeRoots(spread, below)
      expect(jacobian[0] / ((above[0] - below[0]) / 2e-8)).toBeCloseTo(1, 5)
    }
  })
})

/** A common mean of `points` values whose own uncertainties are estimated with ν degrees of freedom each. */
function coverageOfMean(nu: number, points: number, loss: (t2: number) => number): number {
  const random = randomFrom(3, 100 * nu + points)
  const rounds = 2000
  let inside = 0
  for (let round = 0; round < rounds; round++) {
    const values = Array.from({ length: points }, () => {
      const sigma = Math.exp(0.4 * random.normal())
      return { y: sigma * random.normal(), u2: (sigma * sigma * chiSquaredDraw(random, nu)) / nu }
    })
    const total = (mean: number): number => values.reduce((sum, { y, u2 }) => sum + loss((y - mean) ** 2 / u2), 0)
    const weightAt = (mean: number, { y, u2 }: { y: number; u2: number }): number => 1 / (nu * u2 + (y - mean) ** 2)
    let least = Number.POSITIVE_INFINITY
    for (const { y: start } of values) {
      let mean = start
      for (let step = 0; step < 50; step++) {
        const weights = values.map((value) => weightAt(mean, value))
        const sum = weights.reduce((s, w) => s + w, 0)
        mean = weights.reduce((s, w, i) => s + w * values[i].y, 0) / sum
      }
      least = Math.min(least, total(mean))
    }
    // 95 % quantile of χ² with one degree of freedom.
    if (total(0) - least < 3.8415) inside++
  }
  return inside / rounds
}

describe('what the factor ν − 1 is for', () => {
  // 2000 rounds: standard error 0.5 %. Truth covered by intervals of the loss, where Student's own likelihood is too sure.
  test.for([
    { nu: 3, points: 10 },
    { nu: 5, points: 3 },
    { nu: 10, points: 8 },
  ])('intervals at ν = $nu from $points points cover as they say', ({ nu, points }) => {
    const ours = coverageOfMean(nu, points, (t2) => (nu - 1) * Math.log1p(t2 / nu))
    expect(ours).toBeGreaterThan(0.935)
    expect(ours).toBeLessThan(0.97)
  })

  test("Student's likelihood does not", () => {
    expect(coverageOfMean(3, 10, (t2) => 4 * Math.log1p(t2 / 3))).toBeLessThan(0.88)
  })

  test.for([3, 10, 100])('weighted squares come to the number of points at the truth, ν = %d', (nu) => {
    const random = randomFrom(4, nu)
    const rounds = 4000
    let sum = 0
    for (let round = 0; round < rounds; round++) {
      const own = Array.from({ length: 5 }, () => Math.sqrt(chiSquaredDraw(random, nu) / nu))
      const residuals = Float64Array.from(own, () => random.normal())
      sum += weightedSquares(spreadOf(observations(own, nu), 0), residuals)
    }
    // Variance of each term is 2ν/(ν+3) < 2.
    expect(Math.abs(sum / rounds - 5)).toBeLessThan(4 * Math.sqrt(10 / rounds))
  })
})

test('a plain draw with the effective uncertainty has the information of the loss', () => {
  const spread = spreadOf(observations([0.02], 4), 0)
  // (ν−1)²/((ν+1)(ν u² + r²)) at ν = 4, u = 0.02, r = 0.01, by hand.
  expect(effectiveUncertainty(spread, Float64Array.of(0.01))[0] ** -2).toBeCloseTo(9 / (5 * (4 * 4e-4 + 1e-4)), 6)
})

describe('scatter between steps', () => {
  test('none where own uncertainties explain the residuals', () => {
    expect(extraScatter(observations([0.1, 0.1, 0.1], 1e9), Float64Array.of(0.05, -0.1, 0.05), 2)).toBe(0)
  })

  test('without own uncertainty it is the standard deviation of the residuals', () => {
    const residuals = Float64Array.of(0.03, -0.01, -0.02)
    const want = Math.sqrt(0.0014 / 2)
    expect(extraScatter(observations([1e-7, 1e-7, 1e-7], 1e9), residuals, 2) / want).toBeCloseTo(1, 5)
  })
})
