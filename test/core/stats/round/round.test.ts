import { describe, expect, test } from 'vitest'
import { roundConsistency, roundPrecision } from '../../../../src/core/stats/judging/index.ts'
import { published } from '../chart/publishedCharts.ts'

const near = (value: number | null, want: number, within: number): void =>
  expect(Math.abs((value ?? Number.NaN) - want), `${value} for ${want}`).toBeLessThan(within)

// ASTM E691, serum example: 8 laboratories, 3 results. A, D and E agree with the published table; B and C follow from the data as stored.
test.for([
  { material: 'A', mean: 41.5183, means: 0.6061, r: 1.0632, R: 1.0632 },
  { material: 'B', mean: 79.6079, means: 0.8627, r: 1.4961, R: 1.4961 },
  { material: 'C', mean: 135.1388, means: 2.6567, r: 2.7509, R: 3.4789 },
  { material: 'D', mean: 194.7171, means: 2.595, r: 2.6251, R: 3.3657 },
  { material: 'E', mean: 294.4921, means: 2.6931, r: 3.935, R: 4.1923 },
] as const)('material $material of ASTM E691: s_r $r, s_R $R', ({ material, mean, means, r, R }) => {
  const found = roundPrecision(published.glucose.data[material])
  near(found.mean, mean, 1e-4)
  near(found.meansDeviation, means, 1e-4)
  near(found.repeatability, r, 1e-4)
  near(found.reproducibility, R, 1e-4)
})

test.for([
  ['A', 2.98, 2.98],
  ['D', 7.35, 9.42],
  ['E', 11.02, 11.74],
] as const)('published limits r and R of material %s: %d and %d (ASTM E691, from memory)', ([material, r, R]) => {
  const found = roundPrecision(published.glucose.data[material])
  near(found.repeatabilityLimit, r, 0.006)
  near(found.reproducibilityLimit, R, 0.006)
})

describe('h and k (ASTM E691)', () => {
  test('of material A', () => {
    const { laboratories } = roundConsistency(published.glucose.data.A)
    const h = [-0.39, -0.13, -0.11, -0.1, -0.09, 0.83, -1.75, 1.75]
    const k = [0.21, 0.46, 1, 1.7, 0.34, 1.32, 1.17, 0.77]
    for (const [index, laboratory] of laboratories.entries()) {
      near(laboratory.h, h[index], 0.0051)
      near(laboratory.k, k[index], 0.0051)
      near(laboratory.hCritical, 2.15, 0.006)
      near(laboratory.kCritical, 2.06, 0.006)
    }
  })

  test('k of laboratory 4 on C and of laboratory 2 on E are flagged, h of laboratory 4 on C just not', () => {
    const c = roundConsistency(published.glucose.data.C).laboratories[3]
    const e = roundConsistency(published.glucose.data.E).laboratories[1]
    near(c.k, 2.41, 0.0051)
    near(e.k, 2.33, 0.0051)
    near(c.h, 2.14, 0.0051)
    expect([c.k, e.k, c.h].map((value, i) => (value ?? 0) > ([c.kCritical, e.kCritical, c.hCritical][i] ?? 0))).toEqual(
      [true, true, false],
    )
  })
})

describe('creosote (ISO 5725-2, example 3, data from memory, figures by computation and equal to the print)', () => {
  const levels = published.creosote.data
  const test5725 = (cells: readonly (readonly number[])[], test: string) =>
    roundConsistency(cells).tests.find((one) => one.test === test)

  test.for([0, 1, 2, 3, 4])('level %d with all laboratories: Cochran and Grubbs', (level) => {
    const cochran = [0.566, 0.45, 0.492, 0.667, 0.636][level]
    const high = [1.949, 1.644, 2.502, 2.471, 2.102][level]
    const scatter = test5725(levels[level], 'cochran')
    near(scatter?.statistic ?? null, cochran, 0.001)
    near(scatter?.straggler ?? null, 0.638, 0.001)
    near(scatter?.outlier ?? null, 0.754, 0.001)
    expect(scatter?.verdict).toBe(level === 3 ? 'straggler' : 'none')
    if (level === 3) expect(scatter?.laboratories).toEqual([6])
    const one = test5725(levels[level], 'grubbsHigh')
    near(one?.statistic ?? null, high, 0.001)
    expect(one?.verdict).toBe(level === 2 || level === 3 ? 'outlier' : 'none')
    if (one?.verdict === 'outlier') expect(one.laboratories).toEqual([0])
  })

  test.for([
    { level: 0, m: 3.941, r: 0.092, R: 0.171 },
    { level: 1, m: 8.282, r: 0.179, R: 0.498 },
    { level: 2, m: 14.178, r: 0.127, R: 0.4 },
    { level: 3, m: 15.588, r: 0.337, R: 0.579 },
    { level: 4, m: 20.412, r: 0.393, R: 0.637 },
  ])('level $level without laboratory 1 (and 6 on the last): m $m, s_r $r, s_R $R', ({ level, m, r, R }) => {
    const out = level === 4 ? [0, 5] : [0]
    const found = roundPrecision(levels[level].filter((_, laboratory) => !out.includes(laboratory)))
    near(found.mean, m, 0.001)
    near(found.repeatability, r, 0.001)
    near(found.reproducibility, R, 0.001)
  })

  test('after laboratory 1 is out, the lowest of level 5 is a straggler', () => {
    const low = test5725(levels[4].slice(1), 'grubbsLow')
    near(low?.statistic ?? null, 2.189, 0.001)
    expect(low).toMatchObject({ verdict: 'straggler', laboratories: [4] })
  })

  test('the pair tests are left out where one laboratory is an outlier already', () => {
    expect(test5725(levels[2], 'grubbsPairHigh')).toBeUndefined()
    expect(test5725(levels[0], 'grubbsPairHigh')?.verdict).toBe('none')
  })
})

test('unlike numbers of results: the mean of 3 and 1 weighs by them, and single results tell no k', () => {
  // By hand: cells 1, 2, 3 and 6; grand mean 3; s_r² = 1; s_d² = 3·1 + 9 = 12; n̄ = 4 − 10/4 = 1.5; s_L² = 11/1.5.
  const found = roundPrecision([[1, 2, 3], [6]])
  near(found.mean, 3, 1e-12)
  near(found.repeatability, 1, 1e-12)
  near(found.betweenLaboratories ** 2, 11 / 1.5, 1e-12)
  expect(roundConsistency([[1, 2, 3], [6]]).laboratories[1]).toMatchObject({
    k: null,
    kCritical: null,
    hCritical: null,
  })
})

test('a round without two results anywhere is refused', () => {
  expect(() => roundPrecision([[1], [2], [3]])).toThrow(RangeError)
  expect(() => roundPrecision([[1, 2]])).toThrow(RangeError)
})
