import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fourierTransform, randomFrom } from '../../../src/core/numeric/index.ts'
import { falseAlarm, falseAlarmKnownVariance, lombScargle } from '../../../src/core/stats/index.ts'
import { examples } from './examples.ts'

const { t, y, f, P, normalised } = examples.lombScargle

test('powers and shares of the example (formula of Scargle 1982, computed independently)', () => {
  const { power, explained } = lombScargle(t, y, f)
  for (const [i, want] of P.entries()) expect(Math.abs(power[i] - want)).toBeLessThan(1e-8)
  for (const [i, want] of normalised.entries()) expect(Math.abs(explained[i] - want)).toBeLessThan(1e-8)
})

describe('identities (Scargle 1982)', () => {
  test('a shift of all times changes nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (shift) => {
        const moved = lombScargle(
          t.map((value) => value + shift),
          y,
          f,
        )
        for (const [i, want] of P.entries()) expect(Math.abs(moved.power[i] - want)).toBeLessThan(1e-8)
      }),
    )
  })

  test('even sampling: |DFT|²/N at the Fourier frequencies, the Nyquist one among them', () => {
    const count = 32
    const random = randomFrom(11)
    const real = random.fillNormal(new Float64Array(count))
    const even = Float64Array.from(real)
    const imaginary = new Float64Array(count)
    fourierTransform(real, imaginary)
    const times = Array.from({ length: count }, (_, i) => i)
    const { power } = lombScargle(
      times,
      even,
      Float64Array.from({ length: 16 }, (_, k) => (k + 1) / count),
    )
    for (let k = 1; k < 16; k++) expect(power[k - 1]).toBeCloseTo((real[k] ** 2 + imaginary[k] ** 2) / count, 10)
    expect(power[15]).toBeCloseTo(real[16] ** 2 / count / 2, 10)
  })

  test('half the fall in the sum of squares of the sinusoid fit', () => {
    const centre = y.reduce((a, b) => a + b, 0) / y.length
    const { power } = lombScargle(t, y, f)
    for (const [i, frequency] of f.entries()) {
      // Normal equations of a cos + b sin, solved by hand.
      let [cc, ss, cs, yc, ys] = [0, 0, 0, 0, 0]
      for (const [j, time] of t.entries()) {
        const c = Math.cos(2 * Math.PI * frequency * time)
        const s = Math.sin(2 * Math.PI * frequency * time)
        cc += c * c
        ss += s * s
        cs += c * s
        yc += (y[j] - centre) * c
        ys += (y[j] - centre) * s
      }
      const determinant = cc * ss - cs * cs
      const fall = (yc * (ss * yc - cs * ys) + ys * (cc * ys - cs * yc)) / determinant
      expect(power[i]).toBeCloseTo(fall / 2, 10)
    }
  })
})

describe('false alarms of white noise', () => {
  // At four standard errors of the count among 2000 seeds.
  test('the highest of the Fourier powers exceeds the level as often as said', () => {
    const count = 33
    const times = Float64Array.from({ length: count }, (_, i) => i)
    const frequencies = Float64Array.from({ length: 16 }, (_, k) => (k + 1) / count)
    const random = randomFrom(3)
    const seen = { known: 0, estimated: 0 }
    const trials = 2000
    for (let trial = 0; trial < trials; trial++) {
      const { power, explained } = lombScargle(times, random.fillNormal(new Float64Array(count)), frequencies)
      if (falseAlarmKnownVariance(Math.max(...power), 16) < 0.1) seen.known++
      if (falseAlarm(Math.max(...explained), { readings: count, frequencies: 16 }) < 0.1) seen.estimated++
    }
    const error = Math.sqrt((0.1 * 0.9) / trials)
    expect(Math.abs(seen.known / trials - 0.1)).toBeLessThan(4 * error)
    expect(Math.abs(seen.estimated / trials - 0.1)).toBeLessThan(4 * error)
  })

  test('small probabilities keep their digits', () => {
    expect(falseAlarmKnownVariance(50, 10) / (10 * Math.exp(-50))).toBeCloseTo(1, 12)
    expect(falseAlarmKnownVariance(0, 3)).toBe(1)
  })
})

test.for([
  ['frequency 0', () => lombScargle(t, y, [0]), 'above zero, got 0'],
  ['unequal lists', () => lombScargle(t, [1], f), 'got 10 and 1'],
  ['share over one', () => falseAlarm(1.2, { readings: 9, frequencies: 1 }), 'got 1.2'],
  ['too few readings', () => falseAlarm(0.2, { readings: 3, frequencies: 1 }), 'got 3'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
