import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { filmNumbers, softFilmFriction, softRollingFriction, softShearFriction } from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

describe('friction of a soft film (de Vicente, Stokes & Spikes 2005, coefficients from memory; computed independently)', () => {
  const numbers = (speed: number, load: number) => ({ speed, load, material: 0 })
  test('U 2.95279e-7, W 4.65006e-3, pure sliding', () => {
    const friction = softFilmFriction(numbers(2.95279e-7, 4.65006e-3))
    near(friction.shear, 0.0258674, 1e-5)
    near(friction.rolling, 0.00357094, 1e-5)
    near(friction.standingSide, 0.0222965, 1e-5)
    near(friction.movingSide, 0.0294384, 1e-5)
    near(softShearFriction(numbers(2.95279e-7, 4.65006e-3), 0.5), 0.00646686, 1e-5)
  })
  test.for([
    [2.62798e-9, 4.65006e-3, 0.00318884, 1.65915e-4],
    [2.95279e-7, 0.0139502, 0.0182152, 0.001655],
  ])('U %d, W %d', ([speed, load, shear, rolling]) => {
    near(softShearFriction(numbers(speed, load)), shear, 1e-5)
    near(softRollingFriction(numbers(speed, load)), rolling, 1e-5)
  })
})

test('the same ηu by another viscosity gives the same friction', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (share) => {
      const { viscosity, entrainmentSpeed } = contacts.softWater
      const other = { ...contacts.softWater, viscosity: viscosity * share, entrainmentSpeed: entrainmentSpeed / share }
      near(softFilmFriction(filmNumbers(other)).shear, softFilmFriction(filmNumbers(contacts.softWater)).shear, 1e-12)
    }),
  )
})

test('what to doubt: which side is read, and films too thick for the law', () => {
  const kinds = (speed: number, load: number) =>
    softFilmFriction({ speed, load, material: 0 }).doubts.map(({ kind }) => kind)
  expect(kinds(2.62798e-9, 4.65006e-3)).toEqual([])
  expect(kinds(2.95279e-7, 4.65006e-3)).toEqual(['lawsDiffer'])
  expect(kinds(1e-4, 1e-3)).toContain('filmTooThick')
  expect(softFilmFriction({ speed: 0, load: 1e-3, material: 0 })).toMatchObject({ shear: 0, rolling: 0, doubts: [] })
})

test('impossible numbers are refused', () => {
  expect(() => softShearFriction({ speed: -1, load: 1, material: 0 })).toThrow(/speed number/)
  expect(() => softRollingFriction({ speed: 1, load: 0, material: 0 })).toThrow(/load number/)
  expect(() => softShearFriction({ speed: 1, load: 1, material: 0 }, Number.NaN)).toThrow(/slide-to-roll/)
})
