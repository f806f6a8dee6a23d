import { expect, test } from 'vitest'
import { masterFriction } from '../../../src/core/film/index.ts'
import { near } from './near.ts'

/** Made up. */
const curve = {
  filmFactor: 1,
  filmPower: 0.55,
  boundaryFactor: 0.4,
  boundaryPower: 0,
  crossover: 1e-3,
  steepness: 2,
}

test.for([
  [1e-5, 0.39996],
  [1e-4, 0.396102],
  [1e-3, 0.211194],
  [1e-2, 0.082607],
  [1e-1, 0.28185],
])(
  'ηv %d N/m: %d (form of Bongaerts et al. 2007 from memory, made-up constants, computed independently)',
  ([at, want]) => {
    near(masterFriction(at, curve), want, 1e-5)
  },
)

test('slow it is the boundary branch, fast the film branch, at the crossover their mean (exact)', () => {
  const sloped = { ...curve, boundaryPower: -0.1 }
  near(masterFriction(1e-12, sloped), 0.4 * 1e-12 ** -0.1, 1e-12)
  near(masterFriction(1e6, sloped), 1e6 ** 0.55, 1e-12)
  near(masterFriction(1e-3, sloped), (1e-3 ** 0.55 + 0.4 * 1e-3 ** -0.1) / 2, 1e-14)
})

test.for([
  [0, curve, /viscosity times speed/],
  [Number.NaN, curve, /viscosity times speed/],
  [1, { ...curve, crossover: 0 }, /crossover/],
  [1, { ...curve, steepness: -1 }, /steepness/],
  [1, { ...curve, filmFactor: -1 }, /film factor/],
  [1, { ...curve, boundaryFactor: Number.NaN }, /boundary factor/],
  [1, { ...curve, filmPower: Number.NaN }, /powers/],
] as const)('at %d with %o it refuses', ([at, wrong, words]) => {
  expect(() => masterFriction(at, wrong)).toThrow(RangeError)
  expect(() => masterFriction(at, wrong)).toThrow(words)
})
