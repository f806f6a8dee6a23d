import { expect, test } from 'vitest'
import { herseyDefinitions, herseyNumber } from '../../../src/core/film/index.ts'
import { near } from './near.ts'

const terms = { viscosity: 0.1, slidingSpeed: 0.02, load: 5, meanPressure: 4e5, width: 1e-3 }

test.for([
  ['viscositySpeed', 2e-3, 'N/m'],
  ['perLoad', 4e-4, '1/m'],
  ['perPressure', 5e-9, 'm'],
  ['perPressureAndWidth', 5e-6, ''],
] as const)('%s: %d %s (definition)', ([definition, want, unit]) => {
  near(herseyNumber({ definition, ...terms }), want, 1e-14)
  expect(herseyDefinitions[definition].unit).toBe(unit)
})

test('at rest it is zero', () => {
  expect(herseyNumber({ definition: 'viscositySpeed', viscosity: 0.1, slidingSpeed: 0 })).toBe(0)
})

test.for([
  ['perLoad', { load: 0 }, /load/],
  ['perPressure', { meanPressure: Number.NaN }, /mean pressure/],
  ['perPressureAndWidth', { width: -1 }, /width/],
  ['viscositySpeed', { viscosity: 0 }, /viscosity/],
  ['viscositySpeed', { slidingSpeed: Number.NaN }, /sliding speed/],
] as const)('%s refuses %o', ([definition, wrong, words]) => {
  expect(() => herseyNumber({ definition, ...terms, ...wrong })).toThrow(RangeError)
  expect(() => herseyNumber({ definition, ...terms, ...wrong })).toThrow(words)
})
