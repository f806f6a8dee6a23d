import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { kendall, mannKendall, theilSen } from '../../../src/core/stats/index.ts'
import { kendallScore, kendallVariance } from '../../../src/core/stats/kendallScore.ts'
import { tieGroups } from '../../../src/core/stats/tieGroups.ts'
import { examples } from './examples.ts'

describe('Mann–Kendall', () => {
  test.for(examples.mannKendall.values)('score $S, variance $variance, z $z (Kendall 1970)', (want) => {
    const got = mannKendall(want.y)
    expect(got.score).toBe(want.S)
    expect(got.variance).toBeCloseTo(want.variance, 9)
    expect(got.z).toBeCloseTo(want.z, 9)
    expect(got.p).toBeCloseTo(want.p, 12)
  })

  test('a series and its mirror have opposite scores; any rising rescaling changes nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 40 }), (values) => {
        const trend = mannKendall(values)
        expect(mannKendall(values.toReversed()).score).toBe(0 - trend.score)
        expect(mannKendall(values.map((value) => value ** 3))).toEqual(trend)
        expect(trend.p).toBeGreaterThan(0)
        expect(trend.p).toBeLessThanOrEqual(1)
      }),
    )
  })

  test('equal values have no trend', () =>
    expect(mannKendall([2, 2, 2])).toMatchObject({ score: 0, variance: 0, z: 0, p: 1 }))
})

describe('Kendall', () => {
  test('τ 4/9, exact two-sided p 0.119439 (Hollander & Wolfe)', () => {
    const { tau, p, exact } = kendall(examples.kendall.x, examples.kendall.y)
    expect(tau).toBeCloseTo(4 / 9, 14)
    expect(exact).toBe(true)
    expect(Math.abs(p - 0.119439)).toBeLessThan(5e-7)
  })

  test('exact p counts orders: 3 values in order come up in 2 of 6 (up or down)', () => {
    expect(kendall([1, 2, 3], [4, 5, 6]).p).toBeCloseTo(1 / 3, 14)
    expect(kendall([1, 2, 3, 4], [2, 1, 4, 3]).score).toBe(2)
  })

  // Kendall 1945: τ_b = 1 for equal rankings however tied.
  test('ties count on both sides', () => {
    const tied = kendall([1, 1, 2, 2, 3], [5, 5, 7, 7, 8])
    expect(tied.tau).toBeCloseTo(1, 14)
    expect(tied.exact).toBe(false)
  })
})

// The null variance is over all orders of one list against the other, so that counting them out proves the formula.
test.for([
  [
    [1, 2, 3, 4, 5, 6],
    [6, 1, 5, 2, 4, 3],
  ],
  [
    [1, 1, 2, 3, 3, 3],
    [1, 2, 3, 4, 5, 6],
  ],
  [
    [1, 1, 2, 2, 3, 4],
    [1, 1, 1, 2, 2, 3],
  ],
  [
    [1, 1, 1, 1, 2, 2],
    [5, 5, 5, 6, 6, 6],
  ],
])('variance of the score of %o against %o is that of all 720 orders (Kendall 1970)', ([x, y]) => {
  const scores = ordersOf(y).map((order) => kendallScore(x, order))
  expect(scores).toHaveLength(720)
  const variance = scores.reduce((sum, score) => sum + score * score, 0) / 720
  expect(kendallVariance(6, tieGroups(x), tieGroups(y))).toBeCloseTo(variance, 10)
})

function ordersOf(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]]
  return values.flatMap((first, i) => ordersOf(values.toSpliced(i, 1)).map((rest) => [first, ...rest]))
}

describe('Theil and Sen', () => {
  test('slope 4, interval (26/7, 35/8) (Sen 1968)', () => {
    const line = theilSen(examples.sen.x, examples.sen.y)
    expect(line.slope).toBe(4)
    expect(line.intercept).toBe(6)
    expect(line.low).toBe(26 / 7)
    expect(line.high).toBe(35 / 8)
    // Sen prints 93.1 % for it, the probability of a score under 13. The fourth and the eighteenth of 21 slopes leave out
    // 0 to 3 discordant pairs at either end, 76 of 5040 orders, so the interval covers more often; see the next two tests.
    expect(line.coverage).toBeGreaterThan(0.930952)
    expect(line.coverage).toBeCloseTo(1 - (2 * 76) / 5040, 12)
  })

  test('93.1 % belongs to the fifth slope from either end (Hollander & Wolfe: C = k − 2)', () => {
    const line = theilSen(examples.sen.x, examples.sen.y, { confidence: 0.93 })
    expect([line.low, line.high]).toEqual([15 / 4, 46 / 11])
    expect(Math.abs(line.coverage - 0.930952)).toBeLessThan(5e-7)
  })

  test('the coverage it names is the coverage it has, within 3.5 standard errors of 20,000 trials', () => {
    const random = randomFrom(9)
    const { x } = examples.sen
    for (const confidence of [0.93, 0.95]) {
      let covered = 0
      let named = 0
      for (let trial = 0; trial < 20_000; trial++) {
        const { low, high, coverage } = theilSen(x, random.fillNormal(new Float64Array(7)), { confidence })
        if (low < 0 && high > 0) covered++
        named = coverage
      }
      expect(Math.abs(covered / 20_000 - named)).toBeLessThan(3.5 * Math.sqrt((named * (1 - named)) / 20_000))
    }
  })

  test('too few points for the confidence: no ends', () => {
    expect(theilSen([1, 2, 3], [1, 2, 4])).toMatchObject({
      slope: 1.5,
      low: Number.NEGATIVE_INFINITY,
      high: Number.POSITIVE_INFINITY,
      coverage: 1,
    })
  })

  // Sen 1968, eq. 2.6 and 2.7: rank (N − 1.96 √(n(n−1)(2n+5)/18))/2 of N slopes. n 60: N 1770, deviation 156.58, rank 731.
  test('many points: rank by the normal approximation', () => {
    const x = Array.from({ length: 60 }, (_, i) => i)
    const y = x.map((value) => value + 7 * Math.sin(value * value))
    const slopes = x.flatMap((b) => x.filter((a) => a < b).map((a) => (y[b] - y[a]) / (b - a))).sort((a, b) => a - b)
    const line = theilSen(x, y)
    expect([line.low, line.high]).toEqual([slopes[730], slopes[1770 - 731]])
  })

  test('a straight line is found whatever a fifth of the points do', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -1000, max: 1000 }), (slope, wild) => {
        const x = Array.from({ length: 15 }, (_, i) => i)
        const line = theilSen(
          x,
          x.map((value, i) => (i % 5 === 2 ? wild * (i + 1) : slope * value + 3)),
        )
        expect(line.slope).toBeCloseTo(slope, 12)
        expect(line.intercept).toBeCloseTo(3, 9)
      }),
    )
  })
})

test.for([
  ['one value', () => mannKendall([1]), 'at least two values, got 1'],
  ['unequal lists', () => kendall([1, 2], [1]), 'got 2 and 1'],
  ['equal x', () => theilSen([1, 1], [1, 2]), 'two different x'],
  ['confidence 1', () => theilSen([1, 2], [1, 2], { confidence: 1 }), 'got 1'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
