import { expect, test } from 'vitest'
import { sharedBudget } from '../../src/bench/sharedBudget.ts'
import { inventedPoints } from '../figure/inventedCurves.ts'

const points = (shared: readonly Readonly<Record<string, number>>[], friction = 0.2) =>
  inventedPoints({ from: 1, to: 2, count: shared.length, friction: () => friction, ownShare: 0 }).map(
    (point, index) => ({
      ...point,
      shared: shared[index] ?? {},
    }),
  )

test('shares of the variance, largest first (by hand: 3² + 4² = 5² per mille of 0.2)', () => {
  const budget = sharedBudget(points([{ lever: 0.0006, torqueScale: 0.0008 }]))
  expect(budget.map(({ source }) => source)).toEqual(['torqueScale', 'lever'])
  expect(budget[0]?.relative).toBeCloseTo(0.004, 12)
  expect(budget[0]?.share).toBeCloseTo(16 / 25, 12)
  expect(budget[1]?.share).toBeCloseTo(9 / 25, 12)
})

test('a cause that only one of two points has counts half its square (by hand)', () => {
  const budget = sharedBudget(points([{ forceZero: 0.002 }, { forceZero: 0, forceScale: 0 }]))
  expect(budget).toHaveLength(1)
  expect(budget[0]?.relative).toBeCloseTo(0.01 / Math.SQRT2, 12)
})

test('points that are not trusted do not count; without points there is no budget', () => {
  const [one] = points([{ lever: 0.1 }])
  if (one === undefined) throw new Error('one point was asked for')
  expect(sharedBudget([{ ...one, trusted: false }])).toEqual([])
  expect(sharedBudget([])).toEqual([])
})
