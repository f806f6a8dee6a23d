import { expect, test } from 'vitest'
import { explainFilm } from '../../../src/core/film/index.ts'
import { contacts, near, pairs } from './near.ts'

const kinds = (film: { readonly doubts: readonly { readonly kind: string }[] }) => film.doubts.map(({ kind }) => kind)

test('a hard film names its law, gives the first form beside, and doubts numbers beyond the fit of 1977', () => {
  const film = explainFilm(contacts.hardSteel)
  near(film.others[0].minimum, 20.476e-9, 1e-4)
  near(film.others[0].central, 37.002e-9, 1e-4)
  // W 2.1e-6 lies over 1e-6; U and G lie inside.
  expect(kinds(film)).toEqual(['outsideFit'])
  expect(film.doubts[0].sentence).toContain('load number W is 2.1e-6, beyond the 1e-6')
  expect(kinds(explainFilm({ ...contacts.hardSteel, load: 5 }))).toEqual([])
  expect(kinds(explainFilm({ ...contacts.hardSteel, load: 5, pressureViscosity: 5e-9 }))).toContain('outsideFit')
})

test('a soft film gives both other laws, which differ', () => {
  const film = explainFilm(contacts.softWater)
  near(film.others[0].minimum, 145.28e-9, 1e-4)
  near(film.others[0].central, 222.75e-9, 1e-4)
  near(film.others[1].central, 6.35e-3 * 3.3 * 2.627983e-9 ** 0.6 * 4.650063e-3 ** -0.14, 1e-4)
  expect(film.others[1].minimum).toBeNull()
  expect(kinds(film)).toEqual(['lawsDiffer'])
  expect(explainFilm({ ...contacts.softWater, radiusRatio: 2 }).others).toHaveLength(1)
})

test('a film thicker than a hundredth of the radius is not given', () => {
  const film = explainFilm({
    ...pairs.onSteel,
    load: 1e-3,
    viscosity: 1,
    entrainmentSpeed: 0.1,
    pressureViscosity: 0,
  })
  expect(film).toMatchObject({ minimum: null, central: null, others: [] })
  expect(kinds(film)).toEqual(['filmTooThick'])
})

test('a film of a few molecules is doubted', () => {
  expect(kinds(explainFilm({ ...contacts.softWater, entrainmentSpeed: 1e-5 }))).toContain('filmMolecular')
})

test('near a border both laws are named', () => {
  const conditions = { ...pairs.onElastomer, load: 1, viscosity: 1, pressureViscosity: 20e-9, entrainmentSpeed: 0.01 }
  expect(kinds(explainFilm(conditions))).not.toContain('betweenLaws')
  const border = explainFilm({ ...conditions, effectiveModulus: 1e10 })
  const doubt = border.doubts.find(({ kind }) => kind === 'betweenLaws')
  expect(border.regime).toBe('isoviscousElastic')
  expect(doubt?.sentence).toContain('piezoviscous–elastic (hard)')
  expect(doubt?.seen).toBeGreaterThan(0.9)
  expect(doubt?.seen).toBeLessThan(1)
})
