import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { curveFamily } from '../../../src/core/curve/curveFamily.ts'
import { type Observations, reachOf } from '../../../src/core/curve/curvePoint.ts'
import { fitMember, withScatter } from '../../../src/core/curve/fitMember.ts'
import { aicc, akaikeWeights } from '../../../src/core/curve/informationCriterion.ts'
import { linearLeastSquares } from '../../../src/core/numeric/index.ts'

const known = (lnSpeeds: number[], lnFriction: number[], own: number[]): Observations => ({
  lnSpeeds: Float64Array.from(lnSpeeds),
  lnFriction: Float64Array.from(lnFriction),
  own: Float64Array.from(own),
  freedom: new Float64Array(own.length).fill(1e9),
})

test('a plateau with scatter is the weighted mean of Mandel & Paule', () => {
  // Nine laboratories' lead content and its uncertainties (data of the R package metRology), results computed from the
  // defining equations with other software.
  const value = [2.893, 2.936, 2.94, 2.96, 2.98, 3, 3.001, 3.07, 3.13]
  const u = [0.020657, 0.0125, 0.0165, 0.033333, 0.100503, 0.05, 0.068, 0.085, 0.06]
  const observations = known(
    value.map((_, i) => i),
    value,
    u,
  )
  const fit = fitMember(curveFamily.plateau(reachOf(observations)), observations)
  expect(fit.scatter).toBeCloseTo(0.0520119994, 4)
  expect(fit.parameters[0]).toBeCloseTo(2.968477078, 4)
  expect(Math.sqrt(fit.covariance[0])).toBeCloseTo(0.022747364, 4)
  const without = withScatter(fit, 0)
  expect(without.parameters[0]).toBeCloseTo(2.939597087, 6)
  expect(without.loss).toBeCloseTo(20.406855, 4)
})

test('a power law is a straight line of logarithms', () => {
  const x = [-7, -6, -4, -3, -1]
  const y = [-1.2, -1.1, -0.9, -0.85, -0.5]
  const own = [0.01, 0.02, 0.01, 0.03, 0.02]
  const fit = withScatter(fitMember(curveFamily.powerLaw(reachOf(known(x, y, own))), known(x, y, own)), 0)
  const line = linearLeastSquares(
    [own.map((u) => 1 / u), x.map((at, i) => (at + 4) / own[i])],
    y.map((at, i) => at / own[i]),
  )
  for (const j of [0, 1]) expect(fit.parameters[j]).toBeCloseTo(line.coefficients[j], 7)
  for (const j of [0, 1, 2, 3]) expect(fit.covariance[j] / line.inverseGram[j]).toBeCloseTo(1, 6)
  expect(fit.loss).toBeCloseTo(line.residualSumOfSquares, 5)
})

test('too few points are a mistake of the caller', () => {
  const observations = known([0, 1], [0, 0], [0.1, 0.1])
  expect(() => fitMember(curveFamily.powerLaw(reachOf(observations)), observations)).toThrow('more than 2 points')
})

describe('AICc', () => {
  // Misra1a, 1c and 1d share data, two parameters and σ: k = 3, n = 14. Criteria and weights computed from the certified
  // sums of squares (NIST Statistical Reference Datasets) with other software.
  const problems = ['Misra1a', 'Misra1c', 'Misra1d'].map((name) =>
    JSON.parse(readFileSync(new URL(`../../data/nist/nonlinear/${name}.json`, import.meta.url), 'utf8')),
  )
  const criteria = problems.map(({ rss, n }) => aicc({ minusTwoLnL: n * Math.log(rss / n), parameters: 3, points: n }))

  test('criteria', () => {
    for (const [i, want] of [-57.70932, -73.2767, -68.79602].entries()) {
      expect(Math.abs(criteria[i] - want)).toBeLessThan(1e-5)
    }
  })

  test('weights', () => {
    const weights = akaikeWeights(criteria)
    for (const [i, want] of [0.000376, 0.903474, 0.09615].entries()) {
      expect(Math.abs(weights[i] - want)).toBeLessThan(1e-5)
    }
  })

  test('too few points for the parameters: infinite, and no weight', () => {
    const none = aicc({ minusTwoLnL: 0, parameters: 4, points: 5 })
    expect(none).toBe(Number.POSITIVE_INFINITY)
    expect(akaikeWeights([none, 3])).toEqual([0, 1])
  })
})
