import { describe, expect, test } from 'vitest'
import { gaussLegendre, integrate } from '../../../src/core/numeric/index.ts'

describe('Gauss–Legendre', () => {
  // Abramowitz & Stegun, table 25.4.
  test.for([
    [2, 0.5773502691896257, 1],
    [3, 0, 0.8888888888888888],
    [5, 0.5384693101056831, 0.4786286704993665],
    [10, 0.14887433898163122, 0.29552422471475287],
  ])('%d points: node %d, weight %d', ([count, node, weight]) => {
    const { nodes, weights } = gaussLegendre(count)
    const i = nodes.findIndex((x) => Math.abs(x - node) < 1e-14)
    expect(i).toBeGreaterThanOrEqual(0)
    expect(weights[i]).toBeCloseTo(weight, 14)
  })

  test.for([1, 2, 3, 7, 20, 64])('%d points are exact to degree 2n − 1', (count) => {
    const { nodes, weights } = gaussLegendre(count, [0, 2])
    for (let degree = 0; degree < 2 * count; degree++) {
      const sum = nodes.reduce((total, x, i) => total + weights[i] * (x / 2) ** degree, 0)
      expect(Math.abs((sum * (degree + 1)) / 2 - 1)).toBeLessThan(1e-12)
    }
  })
})

describe('adaptive Gauss–Kronrod', () => {
  test('one piece is exact to degree 22', () => {
    for (let degree = 0; degree <= 22; degree++) {
      const { value, evaluations } = integrate((x) => x ** degree, [0, 1], { relative: 1 })
      expect(evaluations).toBe(15)
      expect(value * (degree + 1)).toBeCloseTo(1, 14)
    }
  })

  test.for([
    ['√x, singular slope', (x: number) => Math.sqrt(x), [0, 1], 2 / 3],
    ['ln x, singular end', (x: number) => Math.log(x), [0, 1], -1],
    ['a bell', (x: number) => Math.exp(-((x - 0.3) ** 2) * 400), [-1, 1], Math.sqrt(Math.PI) / 20],
    ['1/(1 + x²)', (x: number) => 1 / (1 + x * x), [-5, 5], 2 * Math.atan(5)],
    ['backwards', (x: number) => Math.cos(x), [Math.PI / 2, 0], -1],
  ] as const)('%s', ([, f, range, want]) => {
    const { value, error, end } = integrate(f, range)
    expect(end).toBe('converged')
    expect(Math.abs(value / want - 1)).toBeLessThan(1e-10)
    expect(Math.abs(value - want)).toBeLessThanOrEqual(error + 1e-15)
  })

  test('says when it ran out of pieces', () => {
    expect(integrate((x) => 1 / x, [0, 1], { mostPieces: 20 }).end).toBe('pieceLimit')
  })
})

test.for([
  ['no points', () => gaussLegendre(0), 'from 1, got 0'],
  ['an endless range', () => integrate((x) => x, [0, Number.POSITIVE_INFINITY]), 'must be finite, got 0 to Infinity'],
  ['what is no number', () => integrate(() => Number.NaN, [0, 1]), 'not a number between 0 and 1'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
