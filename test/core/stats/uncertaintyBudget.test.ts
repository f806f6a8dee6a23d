import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  combineUncertainty,
  correlate,
  studentTQuantile,
  typeA,
  welchSatterthwaite,
} from '../../../src/core/stats/index.ts'
import { examples } from './examples.ts'

test('u 1.03 %, ν_eff 19.0, t 2.09 (JCGM 100:2008, G.4.1, example)', () => {
  const { standardUncertainty, degreesOfFreedom } = combineUncertainty([
    { standardUncertainty: 0.25, degreesOfFreedom: 9 },
    { standardUncertainty: 0.57, degreesOfFreedom: 4 },
    { standardUncertainty: 0.82, degreesOfFreedom: 14 },
  ])
  expect(Math.abs(standardUncertainty - 1.03)).toBeLessThan(0.005)
  expect(Math.abs(degreesOfFreedom - 19)).toBeLessThan(0.05)
  expect(Math.abs(studentTQuantile(0.975, Math.floor(degreesOfFreedom)) - 2.09)).toBeLessThan(0.05)
})

test('20 temperatures: mean 100.145, s 1.489, u 0.333 (JCGM 100:2008, 4.4.3)', () => {
  const { mean, standardDeviation, standardUncertainty, degreesOfFreedom } = typeA(examples.gum443.values)
  expect(Math.abs(mean - 100.145)).toBeLessThan(5e-4)
  expect(Math.abs(standardDeviation - 1.489)).toBeLessThan(5e-4)
  expect(Math.abs(standardUncertainty - 0.333)).toBeLessThan(5e-4)
  expect(degreesOfFreedom).toBe(19)
})

test.for([
  ['V and I', 'V', 'I_mA', -0.36],
  ['V and φ', 'V', 'phi', 0.86],
  ['I and φ', 'I_mA', 'phi', -0.65],
] as const)('correlation of %s is %d (JCGM 100:2008, H.2, table H.2)', ([, first, second, want]) => {
  const { gumH2 } = examples
  expect(Math.abs(correlate(gumH2[first], gumH2[second]) - want)).toBeLessThan(0.006)
})

test('effective degrees of freedom lie between the fewest and the sum (JCGM 100:2008, G.4.1)', () => {
  const part = fc.record({
    standardUncertainty: fc.double({ min: 1e-6, max: 100, noNaN: true }),
    degreesOfFreedom: fc.double({ min: 0.5, max: 200, noNaN: true }),
  })
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
      const effective = welchSatterthwaite(parts)
      const freedoms = parts.map((each) => each.degreesOfFreedom)
      expect(effective).toBeGreaterThan(Math.min(...freedoms) * (1 - 1e-9))
      expect(effective).toBeLessThan(freedoms.reduce((a, b) => a + b, 0) * (1 + 1e-9))
    }),
  )
})

test('sensitivities multiply, missing degrees of freedom are infinite', () => {
  expect(combineUncertainty([{ standardUncertainty: 1.5, sensitivity: -2 }, { standardUncertainty: 4 }])).toEqual({
    standardUncertainty: 5,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  })
  expect(combineUncertainty([])).toEqual({ standardUncertainty: 0, degreesOfFreedom: Number.POSITIVE_INFINITY })
})

test.for([
  ['uncertainty NaN', () => combineUncertainty([{ standardUncertainty: Number.NaN }]), 'got NaN'],
  ['no freedom', () => welchSatterthwaite([{ standardUncertainty: 1, degreesOfFreedom: 0 }]), 'got 0'],
  ['one reading', () => typeA([1]), 'at least two readings, got 1'],
  ['unequal lists', () => correlate([1, 2], [1, 2, 3]), 'got 2 and 3'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
