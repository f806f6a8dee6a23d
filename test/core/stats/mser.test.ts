import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mser5 } from '../../../src/core/stats/index.ts'

describe('MSER-5 (White 1997, Simulation 69:323)', () => {
  test('a ramp, then noise about zero: the first of the tied minima', () => {
    const ramp = Array.from({ length: 25 }, (_, i) => 10 - 0.4 * i)
    const quiet = Array.from({ length: 15 }, () => [0.5, -0.5, 0.25, -0.25, 0]).flat()
    const { cut, statistic, atLimit } = mser5([...ramp, ...quiet])
    expect(cut).toBe(25)
    expect(atLimit).toBe(false)
    const want = [0.3535, 0.20971, 0.103704, 0.036475, 0.005273, 0, 0, 0, 0, 0, 0]
    expect(statistic).toHaveLength(want.length)
    for (const [d, value] of want.entries()) expect(Math.abs(statistic[d] - value)).toBeLessThan(5e-6)
  })

  test('a decay with alternating noise; printed to 7 decimals', () => {
    const decay = Array.from({ length: 100 }, (_, i) => 10 * 0.8 ** i + (i % 2 === 1 ? 0.5 : -0.5))
    const { cut, statistic } = mser5(decay)
    expect(cut).toBe(20)
    const want = [
      0.1120648, 0.0148449, 0.0018242, 0.0008869, 0.0006024, 0.0006813, 0.0007082, 0.0007668, 0.0008324, 0.0009019,
      0.0009999,
    ]
    expect(statistic).toHaveLength(want.length)
    for (const [d, value] of want.entries()) expect(Math.abs(statistic[d] - value)).toBeLessThan(1e-6)
    const left = decay.slice(20)
    expect(left.reduce((a, b) => a + b, 0) / left.length).toBeCloseTo(0.00720576, 6)
  })
})

test('equal readings are left alone, whatever their level', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 10, max: 200 }), (level, count) => {
      expect(mser5(new Float64Array(count).fill(level)).cut).toBe(0)
    }),
  )
})

test('shift and scale do not move the cut, which leaves at least half of the batches', () => {
  const reading = fc.integer({ min: -1000, max: 1000 })
  fc.assert(
    fc.property(fc.array(reading, { minLength: 10, maxLength: 120 }), reading, (values, shift) => {
      const { cut } = mser5(values)
      expect(mser5(values.map((value) => 4 * value + shift)).cut).toBe(cut)
      expect(cut % 5).toBe(0)
      expect(cut / 5).toBeLessThanOrEqual(Math.floor(Math.floor(values.length / 5) / 2))
    }),
  )
})

test('a trend that never ends is cut at the limit and says so', () => {
  const { cut, atLimit } = mser5(Array.from({ length: 100 }, (_, i) => i))
  expect({ cut, atLimit }).toEqual({ cut: 50, atLimit: true })
})

test('fewer than two batches give no cut', () => {
  expect(mser5([9, 1, 1, 1, 1, 1, 1, 1, 1])).toMatchObject({ cut: 0, atLimit: false })
})
