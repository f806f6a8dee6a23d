import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { linearInterpolant, monotoneInterpolant } from '../../../src/core/numeric/index.ts'

const ways = [
  { name: 'linear', through: linearInterpolant },
  { name: 'monotone', through: monotoneInterpolant },
]

const knots = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })), {
    minLength: 2,
    maxLength: 12,
  })
  .map((steps) => {
    let x = 0
    return { x: steps.map(([width]) => (x += width)), y: steps.map(([, y]) => y) }
  })

describe.each(ways)('$name', ({ through }) => {
  test('goes through its points and stays between neighbours', () => {
    fc.assert(
      fc.property(knots, fc.double({ min: 0, max: 1, noNaN: true }), ({ x, y }, part) => {
        const curve = through(x, y)
        for (const [i, value] of y.entries()) expect(curve(x[i])).toBe(value)
        for (let i = 1; i < x.length; i++) {
          const seen = curve(Math.min(x[i], x[i - 1] + part * (x[i] - x[i - 1])))
          expect(seen).toBeGreaterThanOrEqual(Math.min(y[i], y[i - 1]) - 1e-12)
          expect(seen).toBeLessThanOrEqual(Math.max(y[i], y[i - 1]) + 1e-12)
        }
      }),
    )
  })

  test('a straight line stays straight', () => {
    const x = [0, 0.1, 1, 5, 6]
    const curve = through(
      x,
      x.map((value) => 3 * value - 2),
    )
    for (const at of [0.05, 0.6, 2, 5.5]) expect(curve(at)).toBeCloseTo(3 * at - 2, 12)
  })

  test.for([
    ['outside', () => through([0, 1], [0, 1])(1.01), '1.01 lies outside 0 to 1'],
    ['NaN', () => through([0, 1], [0, 1])(Number.NaN), 'NaN lies outside'],
    ['falling x', () => through([0, 2, 1], [0, 1, 2]), 'x must rise, got 1 after 2 at 2'],
    ['one point', () => through([0], [0]), 'two or more points, got 1 x and 1 y'],
  ] as const)('refuses %s', ([, call, message]) => {
    expect(call).toThrow(RangeError)
    expect(call).toThrow(message)
  })
})

test('no overshoot at an end beside a steep turn', () => {
  const curve = monotoneInterpolant([0, 1, 2], [0, 0.1, -9])
  for (let at = 0; at <= 1; at += 0.01) expect(curve(at)).toBeLessThanOrEqual(0.1)
})

test('the monotone curve is smooth: its error on sin nears the cube of the spacing', () => {
  const worst = (count: number): number => {
    const x = Array.from({ length: count + 1 }, (_, i) => (i / count) * 1.4)
    const curve = monotoneInterpolant(x, x.map(Math.sin))
    const places = Array.from({ length: 5000 }, (_, i) => i * 0.00028)
    return Math.max(...places.map((at) => Math.abs(curve(at) - Math.sin(at))))
  }
  expect(worst(20)).toBeLessThan(1e-4)
  expect(Math.log2(worst(160) / worst(320))).toBeGreaterThan(2.9)
})
