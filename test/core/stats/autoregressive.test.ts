import { describe, expect, test } from 'vitest'
import {
  correctLagOne,
  expectedLagOne,
  type LagOneSetting,
  meanVarianceFactor,
  summary,
} from '../../../src/core/stats/index.ts'
import { autoregression } from './autoregression.ts'

describe('variance of the mean of an AR(1) record', () => {
  // Closed form, evaluated independently; the rows of 0.99 keep 6 digits.
  test.for([
    [0.5, 100, 2.96, 1e-5],
    [0.9, 100, 17.20005, 1e-5],
    [0.9, 1000, 18.82, 1e-5],
    [-0.3, 50, 0.545562, 1e-6],
    [0.9, 100, 17.200048, 1e-6],
    [0.99, 100, 73.474404, 1e-6],
    [0.99, 1000, 179.200855, 1e-6],
  ])('φ %d, n %d: %d (Priestley 1981)', ([coefficient, count, want, within]) => {
    expect(Math.abs(meanVarianceFactor(coefficient, count) / want - 1)).toBeLessThan(within)
  })

  test.for([
    [0.5, 3, 1.732],
    [0.9, 19, 4.359],
    [0.99, 199, 14.107],
    [-0.3, 7 / 13, 0.734],
  ])('φ %d: long records near τ %d, standard error times %d', ([coefficient, time, times]) => {
    const factor = meanVarianceFactor(coefficient, 1_000_000_000)
    expect(Math.abs(factor / time - 1)).toBeLessThan(1e-6)
    expect(Math.sqrt(factor)).toBeCloseTo(times, 3)
  })

  test('the closed form and the sum meet where they change over, and φ 1 gives n', () => {
    for (const coefficient of [0.9949, 0.9951]) {
      let sum = 1
      for (let lag = 1; lag < 100; lag++) sum += 2 * (1 - lag / 100) * coefficient ** lag
      expect(meanVarianceFactor(coefficient, 100)).toBeCloseTo(sum, 9)
    }
    expect(meanVarianceFactor(1, 40)).toBeCloseTo(40, 12)
    expect(meanVarianceFactor(0, 40)).toBe(1)
  })

  test('simulated: the scatter of 4000 means is the one said, within 3.5 standard errors', () => {
    const means = Array.from({ length: 4000 }, (_, seed) => summary(autoregression(0.9, 100, seed)).mean)
    const variance = means.reduce((sum, value) => sum + value * value, 0) / means.length
    expect(Math.abs((variance * 100) / 17.20005 - 1)).toBeLessThan(3.5 * Math.sqrt(2 / means.length))
  })
})

describe('lag-one correlation of residuals', () => {
  test('with the mean taken off: ρ − (1 + 4ρ)/n (Kendall 1954; Marriott & Pope 1954)', () => {
    expect(expectedLagOne(0.6, { count: 100 })).toBeCloseTo(0.6 - 3.4 / 100, 14)
    expect(expectedLagOne(0, { count: 100 })).toBeCloseTo(-0.01, 14)
    // Two columns at frequency zero count as two slow regressors.
    expect(expectedLagOne(0.4, { count: 80, slowRegressors: 1, harmonics: [0] })).toBeCloseTo(
      expectedLagOne(0.4, { count: 80, slowRegressors: 3 }),
      14,
    )
  })

  const settings: [number, LagOneSetting][] = [
    [0, { count: 60 }],
    [0.6, { count: 60 }],
    [-0.4, { count: 60 }],
    [0.3, { count: 60, slowRegressors: 2 }],
    [0.5, { count: 60, harmonics: [1.1] }],
    [-0.2, { count: 60, harmonics: [0.8, 1.6] }],
  ]

  // The next term is of order ((regressors + 1)/n)², at most 0.01 here; the bias taken off reaches 0.08.
  test.for(settings)('φ %d, %o: what is seen in 8000 records is what is expected', ([coefficient, setting]) => {
    let sum = 0
    for (let seed = 0; seed < 8000; seed++) sum += lagOneOfResiduals(autoregression(coefficient, 60, seed), setting)
    expect(Math.abs(sum / 8000 - expectedLagOne(coefficient, setting))).toBeLessThan(0.006)
  })

  test.for(settings)('φ %d, %o: the correction undoes it', ([coefficient, setting]) => {
    expect(correctLagOne(expectedLagOne(coefficient, setting), setting)).toBeCloseTo(coefficient, 10)
  })

  test('stays inside ±(1 − 1/n)', () => {
    expect(correctLagOne(1, { count: 50 })).toBe(0.98)
    expect(correctLagOne(-1, { count: 50 })).toBe(-0.98)
  })
})

/** Residuals of a least-squares fit of level, trend and harmonics by orthogonal columns, then their lag-one correlation. */
function lagOneOfResiduals(record: Float64Array, { count, slowRegressors = 1, harmonics = [] }: LagOneSetting): number {
  const at = Array.from({ length: count }, (_, i) => i)
  const columns = [
    ...Array.from({ length: slowRegressors }, (_, power) => at.map((i) => (i - (count - 1) / 2) ** power)),
    ...harmonics.flatMap((omega) => [at.map((i) => Math.cos(omega * i)), at.map((i) => Math.sin(omega * i))]),
  ]
  const basis: number[][] = []
  for (const column of columns) basis.push(unit(basis.reduce(without, column)))
  const left = basis.reduce(without, [...record])
  return left.reduce((sum, e, i) => sum + (i > 0 ? e * left[i - 1] : 0), 0) / dot(left, left)
}

const dot = (a: number[], b: number[]): number => a.reduce((sum, value, i) => sum + value * b[i], 0)

function without(vector: number[], direction: number[]): number[] {
  const along = dot(vector, direction)
  return vector.map((value, i) => value - along * direction[i])
}

function unit(vector: number[]): number[] {
  const size = Math.sqrt(dot(vector, vector))
  return vector.map((value) => value / size)
}

test.for([
  ['φ −1', () => meanVarianceFactor(-1, 5), 'got -1'],
  ['count 0', () => meanVarianceFactor(0.5, 0), 'got 0'],
  ['correlation NaN', () => correctLagOne(Number.NaN, { count: 50 }), 'got NaN'],
  ['few samples', () => correctLagOne(0.2, { count: 6, harmonics: [1] }), 'over 6 samples for 3 regressors, got 6'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
