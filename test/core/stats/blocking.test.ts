import { describe, expect, test } from 'vitest'
import { blocking, blockingPlateau, meanVarianceFactor } from '../../../src/core/stats/index.ts'
import { autoregression } from './autoregression.ts'

const source = 'Flyvbjerg & Petersen 1989, J. Chem. Phys. 91:461'

test(`eight values by hand (${source})`, () => {
  const levels = blocking([2, 4, 3, 5, 6, 4, 7, 5])
  const want = [
    [8, 0.3214286, 0.0859054],
    [4, 0.4166667, 0.1701035],
    [2, 1, Math.SQRT1_2],
  ]
  expect(levels.map((level) => level.blocks)).toEqual(want.map(([blocks]) => blocks))
  for (const [i, [, variance, error]] of want.entries()) {
    expect(Math.abs(levels[i].varianceOfMean - variance)).toBeLessThan(1e-7)
    expect(Math.abs(levels[i].varianceOfMean * levels[i].relativeError - error)).toBeLessThan(1e-7)
  }
})

// Expected n·c₀/(n′ − 1) of an AR(1) record, φ 0.9, σ 1, n 4096, evaluated independently.
const expected = [
  0.995615, 1.891668, 3.509415, 6.160521, 9.798877, 13.52572, 16.146923, 17.549807, 18.25293, 18.604492, 18.780273,
]

describe(`AR(1) φ 0.9, 4096 samples (${source})`, () => {
  test('the exact variance of block means gives the expected level', () => {
    const whole = meanVarianceFactor(0.9, 4096) / 4096
    expect(Math.abs(whole * 4096 - 18.956055)).toBeLessThan(1e-6)
    for (const [level, want] of expected.entries()) {
      const size = 2 ** level
      const blocks = 4096 / size
      const within = meanVarianceFactor(0.9, size) / size - whole
      expect(Math.abs((4096 * within) / (blocks - 1) - want)).toBeLessThan(1e-6)
    }
  })

  test('error factors 0.01105, 0.06275 and 0.18257 at levels 0, 5 and 8', () => {
    const levels = blocking(autoregression(0.9, 4096, 1))
    for (const [level, want] of [
      [0, 0.01105],
      [5, 0.06275],
      [8, 0.18257],
    ]) {
      expect(Math.abs(levels[level].relativeError - want)).toBeLessThan(1e-5)
    }
  })

  test('the mean over 200 records keeps to it, within 3.5 standard errors', () => {
    const records = 200
    const sums = expected.map(() => 0)
    for (let seed = 0; seed < records; seed++) {
      const levels = blocking(autoregression(0.9, 4096, seed))
      for (const i of sums.keys()) sums[i] += levels[i].varianceOfMean * 4096
    }
    for (const [i, want] of expected.entries()) {
      // Variance of a variance of n′ values, n′ being fewer where blocks still depend on each other.
      const free = Math.min(4096 / 2 ** i - 1, 4096 / 19)
      expect(Math.abs(sums[i] / records / want - 1)).toBeLessThan(3.5 * Math.sqrt(2 / (free * records)))
    }
  })

  test('the plateau lies on average within 15 % of the true standard error', () => {
    let sum = 0
    for (let seed = 0; seed < 200; seed++) {
      sum += Math.sqrt(blockingPlateau(blocking(autoregression(0.9, 4096, seed))).varianceOfMean * 4096)
    }
    expect(Math.abs(sum / 200 / Math.sqrt(18.956055) - 1)).toBeLessThan(0.15)
  })
})

test('an odd last value is left out, one value refused', () => {
  expect(blocking([1, 2, 3, 4, 5]).map((level) => level.blocks)).toEqual([5, 2])
  expect(() => blocking([1])).toThrow('at least two values, got 1')
  expect(() => blockingPlateau([])).toThrow(RangeError)
})
