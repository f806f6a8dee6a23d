import { describe, expect, test } from 'vitest'
import { linearLeastSquares } from '../../../../src/core/numeric/index.ts'
import { correlatedProfile } from '../../../../src/core/reduce/profile/correlatedProfile.ts'
import { plainCombination } from '../../../../src/core/reduce/profile/plainCombination.ts'
import { type HeldFit, SeparableProfile } from '../../../../src/core/reduce/profile/separableProfile.ts'
import { studentTQuantile } from '../../../../src/core/stats/index.ts'

const x = [0, 1, 2, 3, 4, 5, 6, 7]
const y = [1.1, 1.9, 3.2, 3.9, 5.2, 5.8, 7.1, 7.9]

describe('with nothing held it is the textbook interval of a straight line', () => {
  const fit = linearLeastSquares([x.map(() => 1), x], y)
  const held: HeldFit = {
    at: [],
    squares: fit.residualSumOfSquares,
    coefficients: fit.coefficients,
    gram: fit.inverseGram,
  }
  const profile = new SeparableProfile([held], fit.degreesOfFreedom)

  test('slope ± t·s/√Sxx (any textbook of regression)', () => {
    const s = Math.sqrt(fit.residualSumOfSquares / 6)
    const reach = (studentTQuantile(0.975, 6) * s) / Math.sqrt(42)
    const slope = profile.combination(() => [0, 1])
    expect(slope.value).toBeCloseTo(fit.coefficients[1], 12)
    expect((slope.high ?? 0) - slope.value).toBeCloseTo(reach, 12)
    expect(slope.value - (slope.low ?? 0)).toBeCloseTo(reach, 12)
  })

  test('what an equation defines lies where its own interval holds zero', () => {
    // Where the line crosses 4: allowed exactly between Fieller's limits.
    const crossing = (4 - fit.coefficients[0]) / fit.coefficients[1]
    expect(profile.allows(() => [1, crossing], 4)).toBe(true)
    expect(profile.allows(() => [1, crossing + 0.5], 4)).toBe(false)
  })
})

test('a held parameter that the data do not bound has an open end', () => {
  const fits = [1, 2, 3].map(
    (at, i): HeldFit => ({
      at: [at],
      squares: i === 0 ? 1 : 1.01,
      coefficients: Float64Array.of(1),
      gram: Float64Array.of(1),
    }),
  )
  const profile = new SeparableProfile(fits, 10)
  expect(profile.held(0)).toEqual({ value: 1, low: null, high: null })
})

test('the ends of a held parameter lie between the places where the limit is crossed', () => {
  // squares = 10 + (θ − 5)²: the limit 10(1 + t²/10) is crossed at 5 ± t.
  const fits = Array.from(
    { length: 2001 },
    (_, i): HeldFit => ({
      at: [i / 200],
      squares: 10 + (i / 200 - 5) ** 2,
      coefficients: Float64Array.of(0),
      gram: Float64Array.of(1),
    }),
  )
  const { low, high } = new SeparableProfile(fits, 10).held(0)
  const t = studentTQuantile(0.975, 10)
  expect(low).toBeCloseTo(5 - t, 4)
  expect(high).toBeCloseTo(5 + t, 4)
})

test('a decay is found again, and its noise free values lie inside the interval', () => {
  const response = Float64Array.from(
    { length: 80 },
    (_, i) => 2 + 3 * Math.exp(-i / 12) + 0.01 * Math.sin(12.9898 * i * i),
  )
  const ones = new Float64Array(80).fill(1)
  const at = (length: number) => Float64Array.from({ length: 80 }, (_, i) => Math.exp(-i / length))
  const fit = correlatedProfile({
    response,
    columns: ([length]) => [ones, at(length)],
    places: Array.from({ length: 40 }, (_, i) => [2 * 1.1 ** i]),
    finer: ([best], zoom) => Array.from({ length: 41 }, (_, i) => [best * (1 + 0.05 * zoom * (i / 20 - 1))]),
  })
  const length = fit?.profile.held(0)
  expect(length?.low).toBeLessThan(12)
  expect(length?.high).toBeGreaterThan(12)
  expect(Math.abs((length?.value ?? 0) / 12 - 1)).toBeLessThan(0.01)
})

test('a plain mean under AR(1) noise has the variance factor of CHECKS 11-5: 2.96 at φ = 0.5, n = 100', () => {
  // n·var(mean)/σ² = τ − 2φ(1 − φⁿ)/(n(1 − φ)²), exact.
  const values = new Float64Array(100).fill(1)
  const weights = new Float64Array(100).fill(0.01)
  const noise = { deviation: 1, noise: { correlation: 0.5, variance: 0 }, effectiveFreedom: 1e9 }
  const { value, high } = plainCombination(values, weights, noise)
  const variance = (((high ?? 0) - value) / studentTQuantile(0.975, 1e9)) ** 2
  expect(100 * variance).toBeCloseTo(2.96, 6)
})
