import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { explainFilm, filmWithThinning, minimumFilm } from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

const { viscosity: _, ...soft } = contacts.softWater
const { viscosity: __, ...hard } = contacts.hardSteel

test('a Newtonian liquid has the film of its viscosity', () => {
  for (const conditions of Object.values(contacts)) {
    const film = filmWithThinning(conditions, () => conditions.viscosity)
    near(film.film.minimum, minimumFilm(conditions), 1e-10)
    expect(film).toMatchObject({ end: 'converged', viscosity: conditions.viscosity })
    expect(film.film).toEqual(explainFilm(conditions))
  }
})

describe('power law η = Kγ^(n−1) in one regime: the film in closed form', () => {
  // h = c·η^p with η = K(u/h)^(n−1), so h = (c·(K·u^(n−1))^p)^(1/(1 + p(n−1))).
  test.for([
    ['soft', soft, 0.66],
    ['hard', hard, 0.68],
  ] as const)('%s, power %d of viscosity', ([, conditions, power]) => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 1.2, noNaN: true }), (n) => {
        const seen = filmWithThinning(conditions, (rate) => 0.5 * (rate / 1000) ** (n - 1))
        const factor = minimumFilm({ ...conditions, viscosity: 1 })
        const consistency = 0.5 * 1000 ** (1 - n)
        const want =
          (factor * (consistency * conditions.entrainmentSpeed ** (n - 1)) ** power) ** (1 / (1 + power * (n - 1)))
        near(seen.film.minimum, want, 1e-8)
      }),
    )
  })
})

describe('a liquid that thins between two plateaus (Cross)', () => {
  const cross = (rate: number): number => 1e-3 + (0.5 - 1e-3) / (1 + (rate / 10) ** 0.8)
  test('lies between the films of both plateaus, and is its own inlet’s film', () => {
    const seen = filmWithThinning(soft, cross)
    const minimum = seen.film.minimum ?? Number.NaN
    expect(minimum).toBeGreaterThan(minimumFilm({ ...soft, viscosity: 1e-3 }))
    expect(minimum).toBeLessThan(minimumFilm({ ...soft, viscosity: 0.5 }))
    near(cross(soft.entrainmentSpeed / minimum), seen.viscosity, 1e-9)
    near(minimumFilm({ ...soft, viscosity: seen.viscosity }), minimum, 1e-9)
    near(seen.shearRate, soft.entrainmentSpeed / minimum, 1e-9)
  })
})

test('the rate of all the sliding thins more, and the difference is shown', () => {
  const thinning = (rate: number): number => 0.5 * (rate / 1000) ** -0.6
  const seen = filmWithThinning(soft, thinning)
  expect(seen.byOtherRate.rate).toBe('sliding')
  expect(seen.byOtherRate.minimum).toBeLessThan(seen.film.minimum ?? Number.NaN)
  expect(seen.doubts.map(({ kind }) => kind)).toContain('rateUnclear')
  const other = filmWithThinning(soft, thinning, 'sliding')
  near(other.film.minimum, seen.byOtherRate.minimum, 1e-9)
  near(other.shearRate, (2 * soft.entrainmentSpeed) / seen.byOtherRate.minimum, 1e-9)
})

test('at rest, and with a flow curve that gives no viscosity, it refuses', () => {
  expect(() => filmWithThinning({ ...soft, entrainmentSpeed: 0 }, () => 1)).toThrow(/entrainment speed/)
  expect(() => filmWithThinning(soft, () => 0)).toThrow(/viscosity at/)
  expect(() => filmWithThinning(soft, () => Number.NaN)).toThrow(RangeError)
})
