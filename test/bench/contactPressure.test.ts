import { expect, test } from 'vitest'
import { contactPressure } from '../../src/bench/contactPressure.ts'
import type { FixtureSpec, Setup, SurfaceSpec } from '../../src/core/terms/index.ts'

const steel: SurfaceSpec = { name: 'steel', elasticModulus: 210e9, poissonRatio: 0.3 }
const ball: FixtureSpec = {
  kind: 'ballsOnPlate',
  balls: 1,
  ballDiameter: 0.0127,
  trackRadius: 0.015,
  trackRadiusUncertainty: 0,
}
const setup = (fixture: FixtureSpec, lower: SurfaceSpec = steel): Setup => ({
  rig: {
    name: 'invented',
    torque: { scaleAccuracy: 0 },
    axialForce: { scaleAccuracy: 0 },
    angularVelocity: {},
  },
  fixture,
  pair: { upper: steel, lower },
  run: {},
  options: {},
})

/** a = (3WR/4E*)^(1/3), p₀ = 3W/2πa², mean 2/3 of it: Johnson 1985, eqs. 4.22–4.24, worked by hand. */
test('a steel ball of 12.7 mm on steel under 5 N: 684 MPa at most, 456 MPa in the mean', () => {
  const modulus = 210e9 / (2 * (1 - 0.3 ** 2))
  const radius = Math.cbrt((3 * 5 * 0.00635) / (4 * modulus))
  const found = contactPressure(setup(ball), 5)
  expect(found?.radius).toBeCloseTo(radius, 12)
  expect(found?.peak).toBeCloseTo((3 * 5) / (2 * Math.PI * radius ** 2), -2)
  expect((found?.peak ?? 0) / 1e6).toBeCloseTo(684, -1)
  expect((found?.mean ?? 0) / 1e6).toBeCloseTo(456, -1)
})

test('three balls share the load', () => {
  expect(contactPressure(setup({ ...ball, balls: 3 }), 6)?.load).toBeCloseTo(2, 12)
})

test('equal balls on balls have half the radius', () => {
  const fixture = { kind: 'ballOnBalls', ballDiameter: 0.0127, ballDiameterUncertainty: 0 } as const
  const found = contactPressure(setup(fixture), 5)
  const onFlat = contactPressure(setup(ball), found?.load ?? Number.NaN)
  // p₀ goes with R^(−2/3).
  expect((found?.peak ?? 0) / (onFlat?.peak ?? 1)).toBeCloseTo(2 ** (2 / 3), 9)
})

test('a ring has load over area and no peak: 10 N on 10 to 12 mm', () => {
  const ring: FixtureSpec = {
    kind: 'ringOnPlate',
    outerRadius: 0.012,
    innerRadius: 0.01,
    segments: 1,
    pressure: 'uniformPressure',
    radiusUncertainty: 0,
  }
  const found = contactPressure(setup(ring), 10)
  expect(found?.mean).toBeCloseTo(10 / (Math.PI * (0.012 ** 2 - 0.01 ** 2)), 3)
  expect(found?.peak).toBeNull()
})

test('a thin lacquer on its wood is doubted, and without a modulus there is no number', () => {
  const lacquer = { name: 'lacquer', elasticModulus: 2.5e9, poissonRatio: 0.35, thickness: 60e-6 }
  expect(contactPressure(setup(ball, lacquer), 5)?.doubts.length).toBeGreaterThan(0)
  expect(contactPressure(setup(ball, { name: 'lacquer' }), 5)).toBeNull()
  expect(contactPressure(setup(ball), 0)).toBeNull()
})
