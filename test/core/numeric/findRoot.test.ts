import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findRoot } from '../../../src/core/numeric/index.ts'

describe('known roots', () => {
  test.for([
    ['x³ − 2x − 5 (Wallis 1685, after Newton)', (x: number) => x ** 3 - 2 * x - 5, [2, 3], 2.0945514815423265],
    ['cos x − x (Dottie number)', (x: number) => Math.cos(x) - x, [0, 1], 0.7390851332151607],
    ['x eˣ − 1 (omega constant)', (x: number) => x * Math.exp(x) - 1, [-1, 1], 0.5671432904097838],
    ['x², shifted, from unlike ends', (x: number) => x * x - 2, [-1, 1e6], Math.SQRT2],
    ['a step', (x: number) => (x < 0.3 ? -1 : 1), [0, 1], 0.3],
    ['a root at an end', (x: number) => x, [0, 4], 0],
  ] as const)('%s', ([, f, range, want]) => {
    const { at, end } = findRoot(f, range)
    expect(end).toBe('converged')
    expect(Math.abs(at - want)).toBeLessThanOrEqual(4 * Number.EPSILON * Math.abs(want) + (want === 0 ? 1e-30 : 0))
  })
})

test('few evaluations on a smooth function', () => {
  expect(findRoot((x) => Math.exp(x) - 3, [0, 4]).evaluations).toBeLessThan(15)
})

test('a looser tolerance stops earlier and keeps to it', () => {
  const f = (x: number): number => Math.tanh(x - 1.234)
  const loose = findRoot(f, [-50, 80], { tolerance: 1e-3 })
  expect(Math.abs(loose.at - 1.234)).toBeLessThanOrEqual(1e-3)
  expect(loose.evaluations).toBeLessThan(findRoot(f, [-50, 80]).evaluations)
})

test('a flat root at zero needs an absolute tolerance', () => {
  const { at, end } = findRoot((x) => x ** 9, [-1, 4], { tolerance: 1e-6 })
  expect(end).toBe('converged')
  expect(Math.abs(at)).toBeLessThan(1e-6)
})

test('a very flat root away from zero is reached, as steps must halve or give way to bisection', () => {
  expect(findRoot((x) => (x - 0.3) ** 19, [-1, 4])).toMatchObject({ end: 'converged', at: expect.closeTo(0.3, 14) })
})

test('says when it ran out of steps', () => {
  expect(findRoot((x) => x ** 9, [-1, 4], { mostEvaluations: 5 })).toMatchObject({ end: 'stepLimit', evaluations: 5 })
})

test('any bracketed cubic: the sign changes at the root', () => {
  const place = fc.double({ min: -10, max: 10, noNaN: true })
  fc.assert(
    fc.property(place, fc.double({ min: 0, max: 10, noNaN: true }), (root, lift) => {
      const f = (x: number): number => (x - root) * ((x - root) ** 2 + lift)
      expect(Math.abs(findRoot(f, [-11, 12]).at - root)).toBeLessThan(1e-4 ** (lift > 0.01 ? 3 : 1))
    }),
  )
})

test.for([
  ['ends of one sign', () => findRoot((x) => x * x + 1, [-1, 1]), 'not bracketed: 2 at -1, 2 at 1'],
  ['an end that is no number', () => findRoot(Math.sqrt, [-1, 1]), 'not bracketed: NaN at -1'],
  [
    'no number on the way',
    () => findRoot((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), [0, 1]),
    'not a number at 0.5',
  ],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
