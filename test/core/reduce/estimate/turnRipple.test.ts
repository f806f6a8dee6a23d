import { describe, expect, test } from 'vitest'
import { poolHarmonics } from '../../../../src/core/reduce/estimate/turnRipple.ts'

const harmonic = (cosine: number, sine: number, variance: number) => ({
  cosine,
  sine,
  cosineVariance: variance,
  sineVariance: variance,
})

describe('harmonics of several steps pooled', () => {
  test('nothing comes from no steps', () => {
    expect(poolHarmonics([])).toBeUndefined()
  })

  test('steps that agree have no scatter between them and share their weight', () => {
    const pooled = poolHarmonics([harmonic(1, 2, 0.1), harmonic(1, 2, 0.1)])
    expect(pooled).toMatchObject({ cosine: 1, sine: 2, between: 0, steps: 2 })
    expect(pooled?.variance).toBeCloseTo(0.05, 12)
  })

  test('steps that differ by more than their noise show it', () => {
    const pooled = poolHarmonics([harmonic(0, 0, 1e-6), harmonic(1, 0, 1e-6), harmonic(0, 1, 1e-6)])
    // Each part scatters with a variance of 1/3 and 1/3, the mean of both.
    expect(pooled?.between).toBeCloseTo(1 / 3, 4)
    expect(pooled?.cosine).toBeCloseTo(1 / 3, 4)
  })
})
