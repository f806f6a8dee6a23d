import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  combinedRoughness,
  entrainmentInPureSliding,
  filmLaw,
  filmNumbers,
  hardFilm,
  lambdaInterval,
  lambdaRatio,
  lubricationRegime,
  minimumFilm,
  regimeSpeeds,
  softFullFilmSeen,
  usualBounds,
} from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

test('λ of the 12.7 mm steel ball with 20 and 50 nm: 0.380224 within the 1e-4 of its film (computed independently)', () => {
  const film = contacts.hardSteel.radius * hardFilm(filmNumbers(contacts.hardSteel)).minimum
  near(lambdaRatio(film, combinedRoughness(20e-9, 50e-9)), 0.380224, 1e-4)
  near(lambdaRatio(3, combinedRoughness(3, 4)), 0.6, 1e-15)
})

describe('names of regimes', () => {
  test.for([
    [0, 'boundary'],
    [0.999, 'boundary'],
    [1, 'mixed'],
    [2.999, 'mixed'],
    [3, 'fullFilm'],
    [Number.POSITIVE_INFINITY, 'fullFilm'],
  ] as const)('λ %d: %s (bounds 1 and 3, common practice)', ([lambda, regime]) => {
    expect(lubricationRegime(lambda)).toBe(regime)
  })
  test('bounds are a convention and may be changed, as a soft contact that left the mixed regime at 0.7 asks for', () => {
    expect(lubricationRegime(0.8, { mixedFrom: 0.2, fullFilmFrom: softFullFilmSeen })).toBe('fullFilm')
  })
  test.for([
    [-1, usualBounds],
    [Number.NaN, usualBounds],
    [1, { mixedFrom: 3, fullFilmFrom: 1 }],
    [1, { mixedFrom: 0, fullFilmFrom: 1 }],
    [1, { mixedFrom: Number.NaN, fullFilmFrom: 1 }],
  ] as const)('λ %d with %o is refused', ([lambda, bounds]) => {
    expect(() => lubricationRegime(lambda, bounds)).toThrow(RangeError)
  })
})

describe('speeds at which the regimes begin', () => {
  test('at them λ stands at its bounds', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(contacts)),
        fc.double({ min: -8.5, max: -6, noNaN: true }),
        (conditions, logRoughness) => {
          const roughness = 10 ** logRoughness
          const speeds = regimeSpeeds({ law: filmLaw(conditions), load: conditions.load, roughness })
          for (const [slidingSpeed, want] of [
            [speeds.mixedFrom, 1],
            [speeds.fullFilmFrom, 3],
          ]) {
            const entrainmentSpeed = entrainmentInPureSliding(slidingSpeed)
            near(lambdaRatio(minimumFilm({ ...conditions, entrainmentSpeed }), roughness), want, 1e-9)
          }
          expect(speeds.fullFilmFrom).toBeGreaterThan(speeds.mixedFrom)
        },
      ),
    )
  })
  test('they do not depend on the speed that is in the conditions, and edited bounds move them', () => {
    const question = { law: filmLaw(contacts.softWater), load: 1, roughness: 1e-7 }
    const soft = regimeSpeeds({ ...question, bounds: { mixedFrom: 0.2, fullFilmFrom: 0.7 } })
    expect(soft.fullFilmFrom).toBeLessThan(regimeSpeeds(question).mixedFrom)
  })
  test('a full film over a very rough surface is beyond any law of films', () => {
    const { doubts } = regimeSpeeds({ law: filmLaw(contacts.softWater), load: 1, roughness: 50e-6 })
    expect(doubts.map(({ kind }) => kind)).toEqual(['filmTooThick'])
  })
  test('no roughness, no load: refused', () => {
    const law = filmLaw(contacts.softWater)
    expect(() => regimeSpeeds({ law, load: 1, roughness: 0 })).toThrow(/roughness/)
    expect(() => regimeSpeeds({ law, load: 0, roughness: 1e-7 })).toThrow(/load/)
  })
})

describe('λ as an interval', () => {
  const question = {
    conditions: { ...contacts.softWater, entrainmentSpeed: 0.1 },
    upper: { value: 10e-9, uncertainty: 1e-9 },
    lower: { value: 100e-9, uncertainty: 15e-9 },
    uncertainties: { viscosity: 0.05e-3 },
  }

  test('first order: powers 0.66 of viscosity, shares of the squares of roughness (JCGM 100, 5.1.6)', () => {
    const seen = lambdaInterval(question)
    const square = 10 ** 2 + 100 ** 2
    const parts = [(0.66 * 0.05) / 0.89, (10 * 1) / square, (100 * 15) / square]
    near(seen.uncertainty, Math.hypot(...parts), 1e-12)
    near(seen.shares.lowerRoughness ?? null, (parts[2] / Math.hypot(...parts)) ** 2, 1e-12)
    near(seen.firstOrder.high, seen.lambda * Math.exp(2 * seen.uncertainty), 1e-12)
    near(
      Object.values(seen.shares).reduce((sum, share) => sum + share, 0),
      1,
      1e-12,
    )
  })

  test('by ends: all inputs at once, each by its own law', () => {
    const { byEnds } = lambdaInterval(question)
    const film = (viscosity: number) => minimumFilm({ ...question.conditions, viscosity })
    near(byEnds.low, film(0.79e-3) / Math.hypot(12e-9, 130e-9), 1e-12)
    near(byEnds.high, film(0.99e-3) / Math.hypot(8e-9, 70e-9), 1e-12)
  })

  test('the first order is the slope of λ: small uncertainties agree by both ways', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.values(contacts)), (conditions) => {
        const one = (uncertainties: object) =>
          lambdaInterval({
            conditions,
            upper: { value: 2e-8, uncertainty: 0 },
            lower: { value: 5e-8, uncertainty: 0 },
            uncertainties: { viscosity: 0, ...uncertainties },
          })
        for (const uncertainties of [
          { viscosity: conditions.viscosity * 1e-5 },
          { load: conditions.load * 1e-5 },
          { pressureViscosity: conditions.pressureViscosity * 1e-5 },
          { law: 1e-5 },
        ]) {
          const { firstOrder, byEnds, lambda } = one(uncertainties)
          expect(Math.abs((firstOrder.high ?? 0) - (byEnds.high ?? 0)) / lambda).toBeLessThan(1e-9)
          expect(Math.abs(firstOrder.low - byEnds.low) / lambda).toBeLessThan(1e-9)
        }
      }),
    )
  })

  test('the regime survives, or does not', () => {
    const near1 = { ...question, conditions: { ...question.conditions, entrainmentSpeed: 0.08 } }
    expect(lambdaInterval(near1)).toMatchObject({ regime: 'mixed', survives: { firstOrder: false, byEnds: false } })
    const calm = lambdaInterval(question)
    expect(calm).toMatchObject({ regime: 'mixed', survives: { firstOrder: true, byEnds: true } })
    expect(
      lambdaInterval({ ...question, conditions: { ...question.conditions, entrainmentSpeed: 0.01 } }),
    ).toMatchObject({
      regime: 'boundary',
      survives: { byEnds: true },
      doubts: [{ kind: 'surfacesTouch' }],
    })
  })

  test('roughness that may be nothing leaves λ without upper bound, viscosity that may be nothing without a film', () => {
    const unknown = lambdaInterval({
      ...question,
      upper: { value: 0, uncertainty: 0 },
      lower: { value: 1e-7, uncertainty: 6e-8 },
      uncertainties: { viscosity: 0.5e-3 },
    })
    expect(unknown.byEnds).toEqual({ low: 0, high: null })
    expect(unknown.survives.byEnds).toBe(false)
    const nothingKnown = lambdaInterval({ ...question, lower: { value: 1e-9, uncertainty: 1e-4 } })
    expect(nothingKnown.firstOrder).toEqual({ low: 0, high: null })
  })

  test('nothing uncertain, nothing wide', () => {
    const exact = lambdaInterval({
      ...question,
      upper: { value: 1e-8, uncertainty: 0 },
      lower: { value: 1e-7, uncertainty: 0 },
      uncertainties: { viscosity: 0 },
    })
    expect(exact).toMatchObject({ uncertainty: 0, shares: {}, survives: { firstOrder: true, byEnds: true } })
    expect(exact.firstOrder.low).toBe(exact.firstOrder.high)
  })

  test.for([
    [{ upper: { value: -1, uncertainty: 0 } }, /upper/],
    [{ lower: { value: 1e-7, uncertainty: Number.NaN } }, /lower roughness/],
    [{ uncertainties: { viscosity: -1 } }, /viscosity/],
    [{ uncertainties: { viscosity: 0, law: Number.NaN } }, /law/],
    [{ coverage: -1 }, /coverage/],
  ] as const)('%o is refused', ([wrong, words]) => {
    expect(() => lambdaInterval({ ...question, ...wrong })).toThrow(RangeError)
    expect(() => lambdaInterval({ ...question, ...wrong })).toThrow(words)
  })
})
