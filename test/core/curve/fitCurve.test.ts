import { expect, test } from 'vitest'
import { fitCurve } from '../../../src/core/curve/index.ts'

test('a curve is fitted and found again', () => {
  const points = Array.from({ length: 16 }, (_, i) => {
    const slidingSpeed = 10 ** (-4 + 0.2 * i)
    const share = 1 / (1 + (slidingSpeed / 5e-3) ** 2)
    const friction = 0.4 * share + 0.5 * slidingSpeed ** 0.5 * (1 - share)
    return { slidingSpeed, friction, ownUncertainty: 0.002 * friction, degreesOfFreedom: 50 }
  })
  const curve = fitCurve(points, { seed: 1, draws: 200 })
  expect(curve.model).toBe('stribeck')
  expect(curve.end?.why).toBe('converged')
  expect(curve.parameters.map(({ name, value }) => [name, Math.round(value * 1e4) / 1e4])).toEqual([
    ['k', 0.5],
    ['n', 0.5],
    ['h', 0.4],
    ['x0', 0.005],
    ['m', 2],
  ])
})
