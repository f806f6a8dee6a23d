import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  centralFilm,
  entrainmentInPureSliding,
  explainFilm,
  type FilmConditions,
  filmLaw,
  filmNumbers,
  filmRegime,
  hardFilm,
  lnMinimumFilm,
  minimumFilm,
  regimeFilms,
  slidingOfEntrainment,
  softFilm,
  speedOfFilm,
} from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

const log = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp)

/** Any contact that a workshop could set up, and some that it could not. */
const anyConditions: fc.Arbitrary<FilmConditions> = fc.record({
  radius: log(1e-4, 0.1),
  effectiveModulus: log(1e4, 1e12),
  load: log(1e-3, 1e3),
  viscosity: log(1e-4, 1e2),
  entrainmentSpeed: log(1e-7, 10),
  pressureViscosity: fc.oneof(fc.constant(0), log(1e-10, 1e-7)),
})

test('in pure sliding the entrainment speed is half of the sliding speed', () => {
  expect(entrainmentInPureSliding(0.2)).toBe(0.1)
  expect(slidingOfEntrainment(entrainmentInPureSliding(0.2))).toBe(0.2)
})

describe('regime and its films (computed independently)', () => {
  test.for([
    ['hardSteel', 'piezoviscousElastic'],
    ['hardGlass', 'piezoviscousElastic'],
    ['softWater', 'isoviscousElastic'],
    ['softSyrup', 'isoviscousElastic'],
    ['rigid', 'isoviscousRigid'],
  ] as const)('%s is %s', ([name, regime]) => {
    expect(filmRegime(contacts[name])).toBe(regime)
    expect(explainFilm(contacts[name]).regime).toBe(regime)
  })

  test('Ĥ of hardSteel 4.1805e6 against 1.2669e6 and 34432, of softWater 7.0081e7 against 6.394e5', () => {
    const hard = regimeFilms(explainFilm(contacts.hardSteel).regimeNumbers ?? { viscosity: 0, elasticity: 0 })
    near(hard.piezoviscousElastic, 4.1805e6, 1e-4)
    near(hard.isoviscousElastic, 1.2669e6, 1e-4)
    near(hard.piezoviscousRigid, 34432, 1e-4)
    const soft = regimeFilms(explainFilm(contacts.softWater).regimeNumbers ?? { viscosity: 0, elasticity: 0 })
    near(soft.isoviscousElastic, 7.0081e7, 1e-4)
    near(soft.piezoviscousElastic, 6.394e5, 1e-4)
  })

  test('rigid: gV 7.6880, gE 8.8285, 140.112 > 14.096 > 11.501, h 1.43501 µm', () => {
    const { regimeNumbers, minimum } = explainFilm(contacts.rigid)
    near(regimeNumbers?.viscosity ?? null, 7.688, 1e-4)
    near(regimeNumbers?.elasticity ?? null, 8.8285, 1e-4)
    const films = regimeFilms(regimeNumbers ?? { viscosity: 0, elasticity: 0 })
    near(films.isoviscousElastic, 14.096, 1e-4)
    near(films.piezoviscousRigid, 11.501, 1e-4)
    near(minimum, 1.43501e-6, 1e-4)
  })

  test('regime form 20.237 against first form 20.476 nm, and 142.13 against 145.28 nm: within 4 %, as exponents were rounded', () => {
    near(minimumFilm(contacts.hardSteel), 20.237e-9, 1e-4)
    near(minimumFilm(contacts.softWater), 142.13e-9, 1e-4)
    const first = hardFilm(filmNumbers(contacts.hardSteel)).minimum * contacts.hardSteel.radius
    near(minimumFilm(contacts.hardSteel), first, 0.04)
    const soft = softFilm(filmNumbers(contacts.softWater)).minimum * contacts.softWater.radius
    near(minimumFilm(contacts.softWater), soft, 0.04)
  })
})

describe('what always holds', () => {
  test('the film is the largest of the four regimes', () => {
    fc.assert(
      fc.property(anyConditions, (conditions) => {
        const { speed, material, load } = filmNumbers(conditions)
        const films = regimeFilms({
          viscosity: (material * load ** 3) / speed ** 2,
          elasticity: load ** (8 / 3) / speed ** 2,
        })
        const largest = Math.max(...Object.values(films)) * conditions.radius * (speed / load) ** 2
        near(minimumFilm(conditions), largest, 1e-9)
        expect(films[filmRegime(conditions)]).toBeGreaterThanOrEqual(Math.max(...Object.values(films)) * (1 - 1e-9))
      }),
    )
  })

  test('no jump in speed, load or viscosity, also where regimes meet', () => {
    const keys = ['entrainmentSpeed', 'load', 'viscosity'] as const
    fc.assert(
      fc.property(anyConditions, fc.constantFrom(...keys), (conditions, key) => {
        const nudged = { ...conditions, [key]: conditions[key] * (1 + 1e-7) }
        near(minimumFilm(nudged), minimumFilm(conditions), 3e-7)
      }),
    )
  })

  test('a sweep over all borders stays continuous and meets three regimes', () => {
    const met = new Set<string>()
    let before = 0
    for (let lnSpeed = Math.log(1e-7); lnSpeed < Math.log(100); lnSpeed += 1e-3) {
      const conditions = { ...contacts.rigid, pressureViscosity: 20e-9, entrainmentSpeed: Math.exp(lnSpeed) }
      const film = minimumFilm(conditions)
      if (before > 0) expect(film / before - 1).toBeLessThan(2.1e-3)
      expect(film).toBeGreaterThan(before)
      before = film
      met.add(filmRegime(conditions))
      met.add(filmRegime({ ...contacts.softWater, entrainmentSpeed: Math.exp(lnSpeed) }))
    }
    expect([...met].sort()).toEqual(['isoviscousElastic', 'isoviscousRigid', 'piezoviscousElastic'])
  })

  test('more speed or viscosity thickens the film, more load thins it', () => {
    fc.assert(
      fc.property(anyConditions, (conditions) => {
        const film = minimumFilm(conditions)
        expect(minimumFilm({ ...conditions, entrainmentSpeed: 2 * conditions.entrainmentSpeed })).toBeGreaterThan(film)
        expect(minimumFilm({ ...conditions, viscosity: 2 * conditions.viscosity })).toBeGreaterThan(film)
        expect(minimumFilm({ ...conditions, load: 2 * conditions.load })).toBeLessThan(film)
        expect(centralFilm(conditions)).toBeGreaterThanOrEqual(film * (1 - 1e-12))
      }),
    )
  })

  test('the same ηu by another viscosity is the same film', () => {
    fc.assert(
      fc.property(anyConditions, log(0.01, 100), (conditions, share) => {
        const other = {
          ...conditions,
          viscosity: conditions.viscosity * share,
          entrainmentSpeed: conditions.entrainmentSpeed / share,
        }
        near(minimumFilm(other), minimumFilm(conditions), 1e-12)
      }),
    )
  })

  test('speed of the film of a speed is that speed, and the straight lines are the same law', () => {
    fc.assert(
      fc.property(anyConditions, (conditions) => {
        const law = filmLaw(conditions)
        const film = minimumFilm(conditions)
        near(speedOfFilm(film, conditions.load, law), conditions.entrainmentSpeed, 1e-9)
        const line = lnMinimumFilm(law, Math.log(conditions.entrainmentSpeed), Math.log(conditions.load))
        near(Math.exp(line), film, 1e-11)
      }),
    )
    expect(speedOfFilm(0, 1, filmLaw(contacts.rigid))).toBe(0)
  })

  test('at rest there is no film', () => {
    const still = { ...contacts.hardSteel, entrainmentSpeed: 0 }
    expect(minimumFilm(still)).toBe(0)
    expect(centralFilm(still)).toBe(0)
    expect(explainFilm(still)).toMatchObject({
      minimum: 0,
      regime: 'piezoviscousElastic',
      regimeNumbers: null,
      others: [],
    })
  })

  test('a contact that is not round', () => {
    const wide = { ...contacts.hardSteel, radiusRatio: 3 }
    expect(minimumFilm(wide)).toBeGreaterThan(minimumFilm(contacts.hardSteel))
    near(minimumFilm({ ...contacts.hardSteel, radiusRatio: 1 }), minimumFilm(contacts.hardSteel), 1e-15)
    near(Math.exp(lnMinimumFilm(filmLaw(wide), Math.log(0.1), Math.log(20))), minimumFilm(wide), 1e-12)
  })
})

test.for([
  [{ load: 0 }, /load must be more than zero and finite, got 0 N/],
  [{ load: -1 }, /load/],
  [{ load: Number.NaN }, /load/],
  [{ entrainmentSpeed: -0.1 }, /entrainment speed/],
  [{ entrainmentSpeed: Number.NaN }, /entrainment speed/],
  [{ radius: 0 }, /radius/],
  [{ effectiveModulus: Number.POSITIVE_INFINITY }, /effective modulus/],
  [{ viscosity: 0 }, /viscosity/],
  [{ pressureViscosity: -1 }, /pressure–viscosity/],
  [{ radiusRatio: Number.NaN }, /radius ratio/],
] as const)('%o is refused', ([wrong, words]) => {
  const conditions = { ...contacts.hardSteel, ...wrong }
  for (const call of [minimumFilm, centralFilm, filmRegime, explainFilm]) {
    expect(() => call(conditions)).toThrow(RangeError)
    expect(() => call(conditions)).toThrow(words)
  }
})

test('speed of a film refuses what is no film', () => {
  expect(() => speedOfFilm(-1, 1, filmLaw(contacts.rigid))).toThrow(/film/)
  expect(() => speedOfFilm(1e-7, Number.NaN, filmLaw(contacts.rigid))).toThrow(/load/)
  expect(() => filmLaw({ ...contacts.rigid, viscosity: -1 })).toThrow(/viscosity/)
})
