import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Life, weibullFit } from '../../../src/core/stats/judging/index.ts'

const times = [
  50, 150, 230, 250, 334, 350, 423, 450, 550, 650, 750, 850, 950, 990, 1009, 1050, 1150, 1250, 1350, 1450, 1510, 1550,
  1650, 1850, 2050,
]
const counts = [288, 148, 1, 124, 1, 111, 1, 106, 99, 110, 114, 119, 127, 1, 1, 123, 93, 47, 41, 27, 1, 11, 6, 1, 2]
const failedAt = new Set([230, 334, 423, 990, 1009, 1510])

/** 1703 bearing cages, 6 of which failed: Meeker & Escobar 1998, Statistical Methods for Reliability Data, table C.5. */
const cages = times.flatMap((at, i) =>
  Array.from({ length: counts[i] }, (): Life => ({ at, failed: failedAt.has(at) })),
)

describe('bearing cages (Meeker & Escobar 1998, table C.5 and example 8.16)', () => {
  const fit = weibullFit(cages)

  test('shape 2.035 and log-likelihood −76.4369', () => {
    expect(fit?.shape.value).toBeCloseTo(2.035, 3)
    expect(fit?.logLikelihood).toBeCloseTo(-76.436896, 5)
    expect(fit?.failures).toBe(6)
    expect(fit?.censored).toBe(1697)
  })

  test('a tenth have failed by 3903, likelihood-ratio interval from 2093 to 22144', () => {
    const life = fit?.quantile(0.1)
    expect(life?.value).toBeCloseTo(3903, 0)
    expect(Math.abs((life?.low ?? 0) / 2093 - 1)).toBeLessThan(1e-3)
    expect(Math.abs((life?.high ?? 0) / 22144 - 1)).toBeLessThan(1e-3)
  })
})

test('with shape held at 1 in the data the scale is total life over failures (exponential law)', () => {
  // Lives at the expected order statistics of an exponential law give a shape near 1; the scale obeys Σ t^k / r = scale^k exactly.
  const lives = [0.1, 0.2, 0.4, 0.7, 1.1, 1.6, 2.5].map((at, i) => ({ at, failed: i % 3 !== 2 }))
  const fit = weibullFit(lives)
  const shape = fit?.shape.value ?? Number.NaN
  const power = lives.reduce((sum, { at }) => sum + at ** shape, 0) / lives.filter(({ failed }) => failed).length
  expect((fit?.scale.value ?? 0) ** shape).toBeCloseTo(power, 9)
})

test('another unit of life scales lives and leaves the shape', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (unit) => {
      const lives = [3, 5, 6, 9, 14].map((at, i) => ({ at, failed: i !== 3 }))
      const one = weibullFit(lives)
      const other = weibullFit(lives.map(({ at, failed }) => ({ at: at * unit, failed })))
      expect(other?.shape.value).toBeCloseTo(one?.shape.value ?? Number.NaN, 6)
      expect((other?.quantile(0.1).value ?? 0) / unit).toBeCloseTo(one?.quantile(0.1).value ?? Number.NaN, 6)
    }),
    { numRuns: 20 },
  )
})

test('one life that ended fixes nothing, and a life of nothing is refused', () => {
  expect(
    weibullFit([
      { at: 1, failed: true },
      { at: 2, failed: false },
    ]),
  ).toBeUndefined()
  expect(() => weibullFit([{ at: 0, failed: true }])).toThrow(RangeError)
  expect(() => weibullFit(cages)?.quantile(1)).toThrow(RangeError)
})
