import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  effectiveModulus,
  firstYield,
  firstYieldLoad,
  firstYieldPressure,
  hertzPeakPressure,
} from '../../../src/core/contact/index.ts'
import { near, steel } from './near.ts'

const sphere = { radius: 0.01, effectiveModulus: effectiveModulus(steel, steel) }

test('ball of R 10 mm, Y 1 GPa with the rounded 1.60: 158.987 N (Johnson 1985, eq. 6.10)', () => {
  near(firstYieldLoad(1.6e9, sphere), 158.987, 1e-5)
  near(hertzPeakPressure(158.987, sphere.radius, sphere.effectiveModulus), 1.6e9, 1e-6)
})

test('the load of first yield puts the peak pressure there', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e6, max: 1e10, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      (pressure, radius) => {
        const ball = { radius, effectiveModulus: sphere.effectiveModulus }
        near(hertzPeakPressure(firstYieldLoad(pressure, ball), radius, ball.effectiveModulus), pressure, 1e-12)
      },
    ),
  )
})

test('the weaker body yields first, each by its own ν', () => {
  const bodies = [
    { name: 'ball', yieldStrength: 2000e6, poissonRatio: 0.3 },
    { name: 'plate', yieldStrength: 200e6, poissonRatio: 0.3 },
  ]
  const calm = firstYield(1, sphere, bodies)
  expect(calm).toMatchObject({ body: 'plate', doubts: [] })
  near(calm.yieldPressure, 1.6128 * 200e6, 1e-4)
  expect(calm.share).toBeLessThan(1)
  const dented = firstYield(10, sphere, bodies)
  expect(dented.doubts.map(({ kind }) => kind)).toEqual(['yields'])
  expect(dented.doubts[0].sentence).toContain('plate first yields')
  expect(dented.share).toBeGreaterThan(1)
})

test('what yields rises with ν', () => {
  expect(firstYieldPressure(1, 0.5)).toBeGreaterThan(firstYieldPressure(1, 0.3))
})

test('no body, no strength and no number are refused', () => {
  expect(() => firstYield(1, sphere, [])).toThrow(RangeError)
  expect(() => firstYieldPressure(0, 0.3)).toThrow(/yield strength/)
  expect(() => firstYieldLoad(Number.NaN, sphere)).toThrow(/yield pressure/)
  expect(() => firstYieldLoad(1, { ...sphere, radius: -1 })).toThrow(/radius/)
})
