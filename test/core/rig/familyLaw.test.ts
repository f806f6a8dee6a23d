import { describe, expect, test } from 'vitest'
import { familyLaw, familyParameters } from '../../../src/core/rig/familyLaw.ts'
import { type CurveModelName, curveModelNames } from '../../../src/core/terms/index.ts'

describe('Stribeck form', () => {
  // k 1, n 0.55, h 0.4, l 0, x0 1e-3, m 2: values computed apart from this program.
  test.for([
    [1e-5, 0.39996],
    [1e-4, 0.396102],
    [1e-3, 0.211194],
    [1e-2, 0.082607],
    [1e-1, 0.28185],
  ])('at %d m/s', ([speed, want]) => {
    const p = { k: 1, n: 0.55, h: 0.4, x0: 1e-3, m: 2 }
    expect(Math.abs(familyLaw('stribeck', p).at(speed) - want)).toBeLessThan(1e-5)
    expect(familyLaw('stribeckSloped', { ...p, l: 0 }).at(speed)).toBe(familyLaw('stribeck', p).at(speed))
  })
})

test('limits: boundary branch when slow, film when fast, their mean at the transition', () => {
  const law = familyLaw('stribeckSloped', { k: 0.1, n: 0.5, h: 0.3, x0: 0.01, m: 2, l: -0.05 })
  expect(law.at(1e-9) / (0.3 * 1e-9 ** -0.05)).toBeCloseTo(1, 9)
  expect(law.at(1e7) / (0.1 * 1e7 ** 0.5)).toBeCloseTo(1, 9)
  expect(law.at(0.01)).toBeCloseTo((0.3 * 0.01 ** -0.05 + 0.1 * 0.01 ** 0.5) / 2, 12)
})

test('exponential form: h at rest, c plus a viscous slope when fast', () => {
  const law = familyLaw('stribeckExponential', { c: 0.1, h: 0.3, k: 0.2, x0: 0.01 })
  expect(law.at(0)).toBeCloseTo(0.3, 12)
  expect(law.at(0.01)).toBeCloseTo(0.1 + 0.2 / Math.E + 0.002, 12)
  expect(law.at(10)).toBeCloseTo(2.1, 12)
})

test('plateau and power law', () => {
  expect(familyLaw('plateau', { h: 0.2 }).at(5)).toBe(0.2)
  expect(familyLaw('powerLaw', { k: 0.2, n: -0.5 }).at(4)).toBeCloseTo(0.1, 15)
})

test.for(curveModelNames)('%s refuses a missing parameter by name', (model: CurveModelName) => {
  const all = Object.fromEntries(familyParameters[model].map((name) => [name, 0.1]))
  for (const name of familyParameters[model]) {
    expect(() => familyLaw(model, { ...all, [name]: Number.NaN })).toThrow(name)
  }
})
