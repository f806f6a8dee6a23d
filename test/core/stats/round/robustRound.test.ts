import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { robustDeviation, robustMean } from '../../../../src/core/stats/round/robustRound.ts'

const data = JSON.parse(readFileSync(new URL('../../../data/stats/rounds-and-charts.json', import.meta.url), 'utf8'))

const near = (value: number, want: number, within: number): void =>
  expect(Math.abs(value - want), `${value} for ${want}`).toBeLessThan(within)

// Example of ISO 5725-5:1998 (creosote, level 5); data seen in a stored source, limits by computation.
test('algorithm A: start 20.300 and 0.949, fourth round 20.4119 and 1.0388, limit 20.4121 and 1.0698', () => {
  const values: number[] = data.algorithmA.x
  near(robustMean(values, 0).mean, 20.3, 1e-4)
  near(robustMean(values, 0).deviation, 0.94912, 1e-4)
  near(robustMean(values, 4).mean, 20.4119, 1e-4)
  near(robustMean(values, 4).deviation, 1.0388, 1e-4)
  expect(robustMean(values).end).toBe('converged')
  near(robustMean(values).mean, 20.4121, 1e-4)
  near(robustMean(values).deviation, 1.0698, 1e-4)
})

test('algorithm S on ranges of two, with η 1.645 and ξ 1.097: 0.68598 as a range, 0.48506 as a standard deviation', () => {
  const ranges: number[] = data.algorithmS.ranges
  const deviation = robustDeviation(
    ranges.map((range) => range / Math.SQRT2),
    1,
  )
  near(deviation, 0.48506, 1e-3 * 0.48506)
  near(deviation * Math.SQRT2, 0.68598, 1e-3 * 0.68598)
})

test('one wild laboratory hardly moves it', () => {
  const calm = [1, 1.1, 0.9, 1.05, 0.95, 1.02, 0.98]
  near(robustMean([...calm, 50]).mean, robustMean(calm).mean, 0.06)
})
