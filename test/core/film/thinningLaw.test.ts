import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  filmWithThinning,
  inletState,
  minimumFilm,
  thinningLaw,
  thinningSpeedOfFilm,
} from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

const cross = (rate: number): number => 1e-3 + (0.5 - 1e-3) / (1 + (rate / 10) ** 0.8)

describe.each(Object.entries(contacts))('%s', (_, { viscosity, ...conditions }) => {
  const at = (flow: (rate: number) => number) =>
    inletState(thinningLaw(conditions, flow), Math.log(conditions.entrainmentSpeed), Math.log(conditions.load))

  test('a liquid of one viscosity has the film of that viscosity', () => {
    const state = at(() => viscosity)
    near(state.film, minimumFilm({ ...conditions, viscosity }), 1e-8)
    expect(state).toMatchObject({ viscosity, slidingViscosity: viscosity })
  })

  test('a thinning one has the film that the explained law gives', () => {
    const state = at(cross)
    const explained = filmWithThinning(conditions, cross)
    near(state.film, explained.film.minimum ?? Number.NaN, 1e-6)
    near(state.viscosity, explained.viscosity, 1e-6)
    near(state.shearRate, explained.shearRate, 1e-6)
    expect(state.slidingViscosity).toBeLessThan(state.viscosity)
  })

  test('the speed of a film gives that film back', () => {
    const law = thinningLaw(conditions, cross)
    fc.assert(
      fc.property(fc.double({ min: -12, max: 2, noNaN: true }), (lnSpeed) => {
        const { film } = inletState(law, lnSpeed, Math.log(conditions.load))
        // Between rigid bodies a thinning liquid may have several films at one speed, so speeds of one film are compared there.
        const speed = thinningSpeedOfFilm(film, conditions.load, law)
        near(speed === null ? null : speed / 2, Math.exp(lnSpeed), 1e-5)
      }),
    )
  })
})

test('a yield stress that carries the load needs no speed, and one that thins too fast has none', () => {
  const { viscosity: _, ...soft } = contacts.softWater
  const yields = thinningLaw(soft, (rate) => 1e6 / rate + 1e-3)
  expect(thinningSpeedOfFilm(1e-9, soft.load, yields)).toBe(0)
  const vanishes = thinningLaw(soft, (rate) => 1e-6 / rate)
  expect(thinningSpeedOfFilm(1e-3, soft.load, vanishes)).toBeNull()
})
