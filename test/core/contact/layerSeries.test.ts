import { describe, expect, test } from 'vitest'
import {
  bondedAsPublished,
  bondedCorrected,
  bondedOfPoisson,
  hertzLoad,
  seriesStiffening,
} from '../../../src/core/contact/index.ts'
import { near } from './near.ts'

describe('bonded layer as first published (Dimitriadis et al. 2002, eq. 12)', () => {
  test.for([
    [0.1, 1.12691],
    [0.2, 1.2842],
    [0.3, 1.4769],
    [0.4, 1.7102],
    [0.5, 1.9895],
    [1, 4.2825],
  ])('χ %d: %d', ([chi, want]) => near(seriesStiffening(chi, bondedAsPublished), want, 1e-4))

  test.for([
    [1e-5, 0.0104352],
    [1e-4, 0.4834196],
  ])('2 MPa, R 6.35 mm, 2 mm thick, %d m deep: %d N', ([approach, want]) => {
    const chi = Math.sqrt(0.00635 * approach) / 0.002
    near(hertzLoad(approach, 0.00635, 2e6 / 0.75) * seriesStiffening(chi, bondedAsPublished), want, 1e-4)
  })
})

describe('corrected (Garcia & Garcia 2018, coefficients from memory)', () => {
  test.for([
    [0.1, 1.1298],
    [0.3, 1.5204],
    [0.5, 2.1716],
  ])('χ %d: %d', ([chi, want]) => near(seriesStiffening(chi, bondedCorrected), want, 1e-4))

  test('2 MPa, R 6.35 mm, 2 mm thick, 0.1 mm deep: 0.510285 N', () => {
    const chi = Math.sqrt(0.00635 * 1e-4) / 0.002
    near(hertzLoad(1e-4, 0.00635, 2e6 / 0.75) * seriesStiffening(chi, bondedCorrected), 0.510285, 1e-4)
  })
})

test('general ν at 0.5: 1.1329, 1.2834, 0.7695, −0.0975 (the print of eq. 12 has +0.0975)', () => {
  const series = bondedOfPoisson(0.5)
  for (const [i, want] of [1.1329, 1.2834, 0.7695, -0.0975].entries()) near(series[i], want, 1e-4)
})

test('impossible arguments are refused', () => {
  expect(() => seriesStiffening(-0.1, bondedCorrected)).toThrow(RangeError)
  expect(() => seriesStiffening(Number.NaN, bondedCorrected)).toThrow(RangeError)
  expect(() => bondedOfPoisson(0.7)).toThrow(/Poisson/)
})
