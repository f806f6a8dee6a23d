import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { createSensor } from '../../../src/core/rig/sensorNoise.ts'
import { deviation, lagOne, mean } from './plainRun.ts'

const n = 100_000

const readings = (noise: Parameters<typeof createSensor>[0], seed: number): Float64Array => {
  const sensor = createSensor(noise, randomFrom(seed))
  return Float64Array.from({ length: n }, () => sensor(0))
}

describe('AR(1) part has the stated spread and memory', () => {
  // Standard errors of an AR(1) series: of the mean σ√(τ/n) with τ = (1+φ)/(1−φ), of φ √((1−φ²)/n) (Bartlett 1946),
  // of the spread σ√((1+φ²)/(1−φ²)/2n). Five of each are allowed.
  test.for([0, 0.3, 0.6, 0.9])('correlation %d', (phi) => {
    const seen = readings({ correlated: 2, correlation: phi }, 100 + 10 * phi)
    expect(Math.abs(mean(seen))).toBeLessThan(5 * 2 * Math.sqrt((1 + phi) / (1 - phi) / n))
    expect(Math.abs(lagOne(seen) - phi)).toBeLessThan(5 * Math.sqrt((1 - phi ** 2) / n))
    expect(Math.abs(deviation(seen) / 2 - 1)).toBeLessThan(5 * Math.sqrt((1 + phi ** 2) / (1 - phi ** 2) / (2 * n)))
  })
})

test('white and remembering parts add in squares', () => {
  const seen = readings({ white: 3, correlated: 4, correlation: 0.8 }, 1)
  expect(Math.abs(deviation(seen) / 5 - 1)).toBeLessThan(0.02)
  expect(Math.abs(lagOne(seen) - (0.8 * 16) / 25)).toBeLessThan(0.02)
})

test('the first reading is as spread as the rest', () => {
  const first = Float64Array.from({ length: 4000 }, (_, i) =>
    createSensor({ correlated: 1, correlation: 0.95 }, randomFrom(i))(0),
  )
  expect(Math.abs(deviation(first) - 1)).toBeLessThan(5 / Math.sqrt(2 * 4000))
})

test('the converter rounds to its step', () => {
  const sensor = createSensor({ white: 1, resolution: 0.25 }, randomFrom(2))
  for (let i = 0; i < 100; i++) expect((sensor(10) * 4) % 1).toBe(0)
})

test('no noise, no change', () => {
  expect(createSensor(undefined, randomFrom(1))(1.25)).toBe(1.25)
  expect(createSensor({}, randomFrom(1))(1.25)).toBe(1.25)
})

test('nonsense is refused', () => {
  expect(() => createSensor({ white: -1 }, randomFrom(1))).toThrow('white')
  expect(() => createSensor({ correlated: 1, correlation: 1 }, randomFrom(1))).toThrow('correlation')
  expect(() => createSensor({ correlated: Number.NaN }, randomFrom(1))).toThrow('correlated')
})
