import { describe, expect, test } from 'vitest'
import { effectiveModulus } from '../../../src/core/contact/index.ts'
import { ellipticity, filmNumbers, hardFilm, lambdaRatio, softFilm } from '../../../src/core/film/index.ts'
import { contacts, near } from './near.ts'

test('factors of a round contact (Hamrock & Dowson 1977 part III as printed; 1978 from memory)', () => {
  const unit = { speed: 1, material: 1, load: 1 }
  near(hardFilm(unit).minimum, 1.79098, 1e-6)
  near(hardFilm(unit).central, 1.899236, 1e-6)
  near(softFilm(unit).minimum, 2.797916, 1e-6)
  near(softFilm(unit).central, 3.336717, 1e-6)
})

describe('U, G and W use E’ = 2E* (computed independently)', () => {
  test.for([
    ['hardSteel', 1.87664e-12, 5076.92, 2.149338e-6],
    ['hardGlass', 6.909449e-12, 2279.2, 2.176204e-6],
  ] as const)('%s', ([name, speed, material, load]) => {
    const numbers = filmNumbers(contacts[name])
    near(numbers.speed, speed, 1e-6)
    near(numbers.material, material, 2e-6)
    near(numbers.load, load, 1e-6)
  })
  test('softWater', () => {
    near(filmNumbers(contacts.softWater).speed, 2.627983e-9, 1e-4)
    near(filmNumbers(contacts.softWater).load, 4.650063e-3, 1e-4)
  })
})

describe('films of hard and soft contacts in their first forms (computed independently)', () => {
  test.for([
    ['hardSteel', 20.476e-9, 37.002e-9],
    ['hardGlass', 33.523e-9, 57.913e-9],
  ] as const)('%s', ([name, minimum, central]) => {
    const film = hardFilm(filmNumbers(contacts[name]))
    near(film.minimum * contacts[name].radius, minimum, 1e-4)
    near(film.central * contacts[name].radius, central, 1e-4)
  })
  test.for([
    ['softWater', 145.28e-9, 222.75e-9],
    ['softSyrup', 3.12675e-6, 4.573e-6],
  ] as const)('%s', ([name, minimum, central]) => {
    const film = softFilm(filmNumbers(contacts[name]))
    near(film.minimum * contacts[name].radius, minimum, 1e-4)
    near(film.central * contacts[name].radius, central, 1e-4)
  })
})

test('base case of 1977, k 6: 7.0009e-6 and 8.7356e-6, the numerical solution about 6.97e-6 (inputs from memory)', () => {
  const film = hardFilm({ speed: 1.683e-12, material: 4522, load: 1.106e-7 }, 6)
  near(film.minimum, 7.0009e-6, 1e-4)
  near(film.central, 8.7356e-6, 1e-4)
  near(film.minimum, 6.97e-6, 0.01)
})

describe('ball bearing (Hamrock & Dowson 1981; Hamrock 1994: inputs public, printed films about 0.557 µm from memory)', () => {
  const [inner, outer, ball, groove] = [52.291e-3, 77.706e-3, 12.7e-3, 6.604e-3]
  const pitch = (inner + outer) / 2
  const steel = { elasticModulus: 200e9, poissonRatio: 0.3 }
  const speed = (400 * (pitch ** 2 - ball ** 2)) / (4 * pitch)
  const across = (groove * ball) / (2 * groove - ball)
  const race = (side: 1 | -1) => {
    const radius = (ball * (pitch + side * ball)) / (2 * pitch)
    const numbers = filmNumbers({
      radius,
      load: (5 * 8900) / 9,
      effectiveModulus: effectiveModulus(steel, steel),
      entrainmentSpeed: speed,
      viscosity: 0.04,
      pressureViscosity: 23e-9,
    })
    const k = ellipticity(across / radius)
    return { radius, numbers, k, minimum: radius * hardFilm(numbers, k).minimum }
  }
  test('speed, radius across and modulus', () => {
    near(speed, 6.25171, 1e-5)
    near(across, 0.1651, 1e-4)
    near(2 * effectiveModulus(steel, steel), 219.78e9, 1e-5)
  })
  test.for([
    ['inner', -1, 5.10928e-3, 9.139, 2.22695e-10, 8.61806e-4, 0.55256e-6, 8.513],
    ['outer', 1, 7.59072e-3, 7.103, 1.49895e-10, 3.90448e-4, 0.66051e-6, 10.177],
  ] as const)('%s race', ([, side, radius, k, speedNumber, loadNumber, minimum, lambda]) => {
    const seen = race(side)
    near(seen.radius, radius, 1e-4)
    near(seen.k, k, 1e-4)
    near(seen.numbers.speed, speedNumber, 1e-4)
    near(seen.numbers.material, 5054.9, 1e-4)
    near(seen.numbers.load, loadNumber, 1e-4)
    near(seen.minimum, minimum, 1e-4)
    near(lambdaRatio(seen.minimum, Math.hypot(0.0625e-6, 0.0175e-6)), lambda, 1e-4)
  })
  test('against the film of the book', () => {
    near(race(-1).minimum, 0.557e-6, 0.02)
  })
})

test('impossible numbers are refused', () => {
  expect(() => hardFilm({ speed: -1, material: 1, load: 1 })).toThrow(/speed number/)
  expect(() => softFilm({ speed: 1, material: Number.NaN, load: 1 })).toThrow(/material number/)
  expect(() => softFilm({ speed: 1, material: 1, load: 0 })).toThrow(/load number/)
  expect(() => hardFilm({ speed: 1, material: 1, load: 1 }, 0)).toThrow(/ellipticity/)
})
