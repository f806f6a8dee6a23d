import { describe, expect, test } from 'vitest'
import { autocorrelations, integratedAutocorrelationTime, summary } from '../../../src/core/stats/index.ts'
import { autoregression } from './autoregression.ts'

// (1 + φ)/(1 − φ): Priestley 1981; over 400 seeds of 10⁴ samples the mean is to agree within 2 %.
test.for([
  [0.5, 3],
  [0.9, 19],
  [-0.3, 7 / 13],
])('AR(1) φ %d has τ %d, on average over 400 seeds', ([coefficient, want]) => {
  const seeds = 400
  let sum = 0
  let squares = 0
  let claimed = 0
  for (let seed = 0; seed < seeds; seed++) {
    const { time, standardError, windowFound } = integratedAutocorrelationTime(
      autoregression(coefficient, 10_000, seed),
    )
    expect(windowFound).toBe(true)
    sum += time
    squares += (time - want) ** 2
    claimed += standardError
  }
  expect(Math.abs(sum / seeds / want - 1)).toBeLessThan(0.02)
  // Its own standard error (Wolff 2004) within a fifth of the scatter seen.
  expect(claimed / seeds / Math.sqrt(squares / seeds)).toBeGreaterThan(0.8)
  expect(claimed / seeds / Math.sqrt(squares / seeds)).toBeLessThan(1.25)
})

test('short white records keep τ 1 on average: what the mean took off is given back', () => {
  let sum = 0
  for (let seed = 0; seed < 1000; seed++) sum += integratedAutocorrelationTime(autoregression(0, 60, seed)).time
  expect(Math.abs(sum / 1000 - 1)).toBeLessThan(0.05)
})

describe('autocorrelations', () => {
  const record = autoregression(0.8, 3000, 4)

  test('few lags and many come by different ways and agree', () => {
    const direct = autocorrelations(record, 20)
    const bySpectrum = autocorrelations(record, 2999)
    for (const [lag, value] of direct.entries()) expect(bySpectrum[lag]).toBeCloseTo(value, 12)
    expect(bySpectrum[2999]).toBeCloseTo(lastLag(record), 12)
  })

  test('lag one is that of the summary', () => {
    expect(autocorrelations(record, 1)[1]).toBeCloseTo(summary(record).lagOneCorrelation, 12)
  })
})

function lastLag(record: Float64Array): number {
  const { mean, standardDeviation, count } = summary(record)
  return ((record[0] - mean) * (record[count - 1] - mean)) / (standardDeviation ** 2 * (count - 1))
}

test('a record without scatter, and one too short for its memory', () => {
  expect(integratedAutocorrelationTime(new Float64Array(50).fill(2))).toMatchObject({ time: 1, windowFound: true })
  const drift = Float64Array.from({ length: 50 }, (_, i) => i)
  expect(integratedAutocorrelationTime(drift).windowFound).toBe(false)
})

test('a long memory in 100,000 samples is found in time', () => {
  const record = autoregression(0.999, 100_000, 8)
  const started = performance.now()
  const { time, windowFound } = integratedAutocorrelationTime(record)
  expect(performance.now() - started).toBeLessThan(1000)
  expect(windowFound).toBe(true)
  expect(Math.abs(time / 1999 - 1)).toBeLessThan(0.8) // one seed; its standard error is about a third
})

test.for([
  ['one value', () => integratedAutocorrelationTime([1]), 'at least two values, got 1'],
  ['factor NaN', () => integratedAutocorrelationTime([1, 2, 3], Number.NaN), 'above zero, got NaN'],
  ['too many lags', () => autocorrelations([1, 2, 3], 3), 'got 3'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
