import { expect, test } from 'vitest'
import { nearestUnit, nearestWord } from '../../../src/core/quantity/index.ts'

const keys = ['trackRadius', 'ballDiameter', 'balls', 'kind', 'roughness']

test.for([
  ['trackradius', 'trackRadius'],
  ['trackRaduis', 'trackRadius'],
  ['ballDiametre', 'ballDiameter'],
  ['ball', 'balls'],
  ['rougness', 'roughness'],
  ['colour', undefined],
  ['', undefined],
] as const)('%s means %s', ([word, meant]) => {
  expect(nearestWord(word, keys)).toBe(meant)
})

test.for([
  ['NM', 'torque', 'N·m'],
  ['mNM', 'torque', 'mN·m'],
  ['MM', 'length', 'mm'],
  ['°c', 'temperature', '°C'],
  ['mpas', 'viscosity', 'mPa·s'],
  ['1/mn', 'angularVelocity', '1/min'],
  ['parsec', undefined, undefined],
] as const)('unit %s of %s means %s', ([text, dimension, meant]) => {
  expect(nearestUnit(text, dimension)).toBe(meant)
})
