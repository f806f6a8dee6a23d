import { describe, expect, test } from 'vitest'
import { chartConstants, cusumChart, ewmaChart, individualsChart } from '../../../../src/core/stats/judging/index.ts'
import { published } from './publishedCharts.ts'

const near = (value: number, want: number, within: number): void =>
  expect(Math.abs(value - want), `${value} for ${want}`).toBeLessThan(within)

/** ISO 7870-2, table 2, and ASTM's manual on control charts print the same; from memory, and by integration in doubles. */
const printed = {
  d2: [1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 2.847, 2.97, 3.078],
  d3: [0.8525, 0.8884, 0.8798, 0.8641, 0.848, 0.8332, 0.8198, 0.8078, 0.7971],
  c4: [0.7979, 0.8862, 0.9213, 0.94, 0.9515, 0.9594, 0.965, 0.9693, 0.9727],
  A2: [1.88, 1.023, 0.729, 0.577, 0.483, 0.419, 0.373, 0.337, 0.308],
  A3: [2.659, 1.954, 1.628, 1.427, 1.287, 1.182, 1.099, 1.032, 0.975],
  D3: [0, 0, 0, 0, 0, 0.076, 0.136, 0.184, 0.223],
  D4: [3.267, 2.575, 2.282, 2.114, 2.004, 1.924, 1.864, 1.816, 1.777],
  B3: [0, 0, 0, 0, 0.03, 0.118, 0.185, 0.239, 0.284],
  B4: [3.267, 2.568, 2.266, 2.089, 1.97, 1.882, 1.815, 1.761, 1.716],
} as const

test.for([2, 3, 4, 5, 6, 7, 8, 9, 10])('factors of charts for samples of %d', (count) => {
  const found = chartConstants(count)
  for (const [name, values] of Object.entries(printed)) {
    near(found[name as keyof typeof printed], values[count - 2], 0.001)
  }
})

test('individuals and moving ranges of ten flow rates (e-Handbook 6.3.2.2, there with 1.128 and 3.267 rounded)', () => {
  const chart = individualsChart(published.individuals)
  near(chart.centre, 50.81, 0.002)
  near(chart.meanRange, 1.8778, 0.002)
  near(chart.upper, 55.8024, 0.002)
  near(chart.lower, 45.8176, 0.002)
  near(chart.rangeUpper, 6.1347, 0.002)
  near(chart.centre + (3 * chart.meanRange) / 1.128, 55.8041, 0.0002)
})

test('limits stay where the baseline put them', () => {
  const chart = individualsChart([...published.individuals, 80, 90], 10)
  expect(chart).toMatchObject({
    upper: individualsChart(published.individuals).upper,
    baseline: 10,
  })
  expect(chart.movingRanges.slice(-2).map((range) => Number(range.toFixed(6)))).toEqual([27.9, 10])
})

test('weighted means of twenty values (e-Handbook 6.3.2.4: λ 0.3, start 50, s 2.0539, steady limits)', () => {
  const want = [
    50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
    50.73, 51.23, 51.94, 51.99,
  ]
  const setting = { centre: 50, deviation: 2.0539, weight: 0.3, width: 3, limits: 'steady' } as const
  const points = ewmaChart(published.ewma, setting)
  for (const [index, { mean, upper, lower, alarm }] of points.entries()) {
    near(mean, want[index], 0.0051)
    near(upper, 52.5884, 0.005)
    near(lower, 47.4115, 0.005)
    expect(alarm).toBe(false)
  }
  const exact = ewmaChart(published.ewma, { ...setting, limits: 'exact' })
  near(exact[0].upper, 50 + 3 * 0.3 * 2.0539, 1e-9)
  near(exact[19].upper, points[19].upper, 0.003)
})

test('cumulative sums of twenty samples (e-Handbook 6.3.2.3: target 325, k 0.3175, h 4.1959)', () => {
  const points = cusumChart(published.cusum, { target: 325, allowance: 0.3175, decision: 4.1959 })
  near(points[12].high, 3.0075, 0.0005)
  near(points[13].high, 4.94, 0.0005)
  near(points[19].high, 19.035, 0.0005)
  expect(points.findIndex(({ alarm }) => alarm)).toBe(13)
})

describe('what cannot be is refused', () => {
  test.for([
    () => individualsChart([1]),
    () => individualsChart([1, 2, 3], 4),
    () => ewmaChart([1], { centre: 0, deviation: 1, weight: 0 }),
    () => ewmaChart([1], { centre: 0, deviation: Number.NaN }),
    () => cusumChart([1], { target: 0, allowance: -1, decision: 1 }),
    () => chartConstants(1),
  ])('%s', (call) => {
    expect(call).toThrow(RangeError)
  })
})
