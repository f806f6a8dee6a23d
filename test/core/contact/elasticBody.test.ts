import { expect, test } from 'vitest'
import { effectiveModulus, effectiveRadius, rigidBody } from '../../../src/core/contact/index.ts'
import { near, steel } from './near.ts'

test('steel on steel: E* 115.3846 GPa, E’ = 2E* 230.769 GPa (Stachowiak & Batchelor, ch. 7)', () => {
  near(effectiveModulus(steel, steel), 115.3846e9, 1e-6)
  near(2 * effectiveModulus(steel, steel), 230.769e9, 1e-5)
})

test('balls of 10 and 15 mm: R 6 mm; a flat has an infinite radius, a hollow a negative one', () => {
  near(effectiveRadius(0.01, 0.015), 0.006, 1e-14)
  near(effectiveRadius(0.01, Number.POSITIVE_INFINITY), 0.01, 1e-14)
  near(effectiveRadius(0.01, -0.02), 0.02, 1e-14)
})

test('a rigid partner leaves the modulus of the other, E/(1 − ν²)', () => {
  near(effectiveModulus(steel, rigidBody), 210e9 / 0.91, 1e-14)
})

test.for([
  [{ elasticModulus: -1, poissonRatio: 0.3 }, /elastic modulus must be more than zero, got -1 Pa/],
  [{ elasticModulus: Number.NaN, poissonRatio: 0.3 }, /elastic modulus/],
  [{ elasticModulus: 1, poissonRatio: 0.7 }, /Poisson ratio must be more than -1 and at most 0.5, got 0.7/],
  [{ elasticModulus: 1, poissonRatio: Number.NaN }, /Poisson ratio/],
] as const)('%o is refused', ([body, words]) => {
  expect(() => effectiveModulus(steel, body)).toThrow(words)
})

test('two rigid bodies and surfaces that do not touch at a point are refused', () => {
  expect(() => effectiveModulus(rigidBody, rigidBody)).toThrow(RangeError)
  expect(() => effectiveRadius(0.01, -0.01)).toThrow(RangeError)
  expect(() => effectiveRadius(0.01, -0.005)).toThrow(RangeError)
  expect(() => effectiveRadius(0, 1)).toThrow(RangeError)
  expect(() => effectiveRadius(Number.NaN, 1)).toThrow(RangeError)
})
