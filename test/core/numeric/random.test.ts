import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Random, randomFrom } from '../../../src/core/numeric/index.ts'
import { zigguratEdges } from '../../../src/core/numeric/ziggurat.ts'

describe('random', () => {
  // Outputs of the authors' own C program for state 1 2 3 4; the first is rotl(2·5, 7)·9 by hand.
  test('gives the published numbers of xoshiro128** (Blackman & Vigna)', () => {
    const random = new Random([1, 2, 3, 4])
    expect(Array.from({ length: 10 }, () => random.bits() >>> 0)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ])
  })

  test('goes on from a kept state', () => {
    const random = randomFrom(7)
    random.normal()
    const again = new Random(random.state)
    expect([again.normal(), again.uniform()]).toEqual([random.normal(), random.uniform()])
  })

  test('layers of the ziggurat close at density 1 (Marsaglia & Tsang 2000)', () => {
    const last = zigguratEdges[255]
    expect(0.00492867323399 / last + Math.exp(-0.5 * last * last)).toBeCloseTo(1, 9)
  })

  // Moments of the standard normal: 0, 1, 0, 3, standard errors √(1, 2, 15, 96)/√n; tails from the table of Φ.
  test('normals have the moments and tails of the standard normal', () => {
    const n = 1_000_000
    const values = randomFrom(20_261_125).fillNormal(new Float64Array(n))
    const share = (limit: number): number => values.reduce((sum, z) => sum + (Math.abs(z) > limit ? 1 : 0), 0) / n
    for (const [power, want, variance] of [
      [1, 0, 1],
      [2, 1, 2],
      [3, 0, 15],
      [4, 3, 96],
    ]) {
      const mean = values.reduce((sum, z) => sum + z ** power, 0) / n
      expect(Math.abs(mean - want)).toBeLessThan(3.5 * Math.sqrt(variance / n))
    }
    for (const [limit, want] of [
      [0.67448975, 0.5],
      [1.959963985, 0.05],
      [3.290526731, 0.001],
      [3.890591886, 0.0001],
    ]) {
      expect(Math.abs(share(limit) - want)).toBeLessThan(3.5 * Math.sqrt(want / n))
    }
  })

  test('uniform stays in [0, 1) with mean 1/2 and variance 1/12', () => {
    const random = randomFrom(3)
    const n = 200_000
    const values = Float64Array.from({ length: n }, () => random.uniform())
    const mean = values.reduce((a, b) => a + b, 0) / n
    expect(Math.abs(mean - 0.5)).toBeLessThan(3.5 / Math.sqrt(12 * n))
    const variance = values.reduce((sum, u) => sum + (u - 0.5) ** 2, 0) / n
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(3.5 / Math.sqrt(180 * n))
    expect(values.every((u) => u >= 0 && u < 1)).toBe(true)
  })

  test('integers fall evenly: χ² of 7 classes stays below its 99.9 % point 22.46', () => {
    const random = randomFrom(5)
    const counts = new Float64Array(7)
    for (let i = 0; i < 70_000; i++) counts[random.integer(7)]++
    expect(counts.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0)).toBeLessThan(22.46)
  })

  test('and are not biased where a class does not divide 2^32: a third of 3·2^30 classes lie under 2^30', () => {
    const random = randomFrom(6)
    let low = 0
    for (let i = 0; i < 30_000; i++) if (random.integer(3 * 2 ** 30) < 2 ** 30) low++
    expect(Math.abs(low / 30_000 - 1 / 3)).toBeLessThan(3.5 * Math.sqrt(2 / 9 / 30_000))
  })

  // Φ: P(|z| > 3.654152885361009) = 2.5803e-4, P(|z| > 4.2) = 2.6691e-5 (mpmath 1.3).
  test('normals beyond the last layer fall off as they should', () => {
    const n = 4_000_000
    const values = randomFrom(12).fillNormal(new Float64Array(n))
    for (const [limit, want] of [
      [3.654152885361009, 2.5803e-4],
      [4.2, 2.6691e-5],
    ]) {
      let seen = 0
      for (let i = 0; i < n; i++) if (Math.abs(values[i]) > limit) seen++
      expect(Math.abs(seen - n * want)).toBeLessThan(3.5 * Math.sqrt(n * want))
    }
  })

  test.for([
    ['two seeds', randomFrom(1), randomFrom(2)],
    ['two streams', randomFrom(1, 0), randomFrom(1, 1)],
    ['a stream and its split', ...((r: Random): [Random, Random] => [r.split(), r])(randomFrom(1))],
    ['two splits', ...((r: Random): [Random, Random] => [r.split(), r.split()])(randomFrom(1))],
  ] as const)('%s are uncorrelated', ([, one, other]) => {
    const n = 100_000
    let sum = 0
    for (let i = 0; i < n; i++) sum += one.normal() * other.normal()
    expect(Math.abs(sum / n)).toBeLessThan(3.5 / Math.sqrt(n))
  })

  test('equal seeds and streams give equal numbers, others differ', () => {
    fc.assert(
      fc.property(fc.maxSafeNat(), fc.nat(1000), (seed, stream) => {
        const first = randomFrom(seed, stream).state
        expect(randomFrom(seed, stream).state).toEqual(first)
        expect(randomFrom(seed, stream + 1).state).not.toEqual(first)
        expect(randomFrom(seed === 0 ? 1 : seed - 1, stream).state).not.toEqual(first)
      }),
      { seed: 20_261_125 },
    )
  })

  test.for([
    ['negative seed', () => randomFrom(-1), 'seed must be a safe integer ≥ 0, got -1'],
    ['seed NaN', () => randomFrom(Number.NaN), 'got NaN'],
    ['stream', () => randomFrom(1, 0.5), 'stream must be a whole number'],
    ['state of zeros', () => new Random([0, 0, 0, 0]), 'must not be all zero'],
    ['below', () => randomFrom(1).integer(0), 'below must be a whole number from 1 to 2^32, got 0'],
  ] as const)('refuses %s', ([, call, message]) => {
    expect(call).toThrow(RangeError)
    expect(call).toThrow(message)
  })
})
