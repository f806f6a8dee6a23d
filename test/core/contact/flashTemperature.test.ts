import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { diffusivity, flashTemperature, heatFactor, pecletNumber } from '../../../src/core/contact/index.ts'
import { near } from './near.ts'

const order = [
  ['uniform', 'maximum'],
  ['uniform', 'mean'],
  ['parabolic', 'maximum'],
  ['parabolic', 'mean'],
] as const
const bearingSteel = { conductivity: 46.6, density: 7810, heatCapacity: 475 }
const polymer = { conductivity: 0.25, density: 2170, heatCapacity: 1050 }

describe('rise as a multiple of q·a/K (Tian & Kennedy 1994, coefficients from memory)', () => {
  test.for([
    [0, [1.000094, 0.848862, 1.178299, 0.883508]],
    [1, [0.748437, 0.534636, 0.875732, 0.603367]],
    [10, [0.336074, 0.210842, 0.390522, 0.250479]],
    [100, [0.112126, 0.068606, 0.130092, 0.082239]],
  ] as const)('Pe %d', ([peclet, wants]) => {
    for (const [i, [spread, measure]] of order.entries()) near(heatFactor(peclet, spread, measure), wants[i], 1e-5)
  })

  test('at rest: within 3e-4 of the exact 1, 8/3π, 3π/8 and 9π/32', () => {
    const exact = [1, 8 / (3 * Math.PI), (3 * Math.PI) / 8, (9 * Math.PI) / 32]
    for (const [i, [spread, measure]] of order.entries()) near(heatFactor(0, spread, measure), exact[i], 3e-4)
  })

  test('fast: the uniform maximum is that of a slab heated for 2a/v, 2/√(πPe) (exact)', () => {
    near(heatFactor(1e8, 'uniform', 'maximum'), 2 / Math.sqrt(Math.PI * 1e8), 1e-7)
  })

  test('fast: the uniform mean is 0.308·Q/(Ka)·√(κ/va) (Stachowiak & Batchelor, ch. 7)', () => {
    // In q·a/K and Pe: Q = πa²q and κ/(va) = 1/(2Pe).
    near(heatFactor(1e8, 'uniform', 'mean'), (0.308 * Math.PI) / Math.sqrt(2e8), 0.01)
    expect(((heatFactor(1e12, 'uniform', 'mean') / Math.PI) * Math.sqrt(2e12)).toFixed(4)).toBe('0.3098')
  })

  test('falls with Pe, and the mean stays under the maximum', () => {
    const peclet = fc.double({ min: 0, max: 1e4, noNaN: true })
    fc.assert(
      fc.property(peclet, fc.constantFrom('uniform', 'parabolic'), (pe, spread) => {
        expect(heatFactor(pe * 1.01 + 0.01, spread, 'mean')).toBeLessThan(heatFactor(pe, spread, 'mean'))
        expect(heatFactor(pe, spread, 'mean')).toBeLessThan(heatFactor(pe, spread, 'maximum'))
      }),
    )
  })
})

describe('steel ball at rest on a moving steel plate, µ 0.4, 10 N, 1 m/s, a 94.2 µm (computed independently)', () => {
  const heat = {
    friction: 0.4,
    load: 10,
    slidingSpeed: 1,
    contactRadius: 94.2e-6,
    resting: bearingSteel,
    moving: bearingSteel,
  }
  const flash = flashTemperature(heat)
  test('heat and Peclet number', () => {
    near(flash.heatFlux, 143.4856e6, 1e-5)
    near(diffusivity(bearingSteel), 1.256149e-5, 1e-5)
    near(flash.peclet, 3.749554, 1e-5)
  })
  test('Blok: maxima 290.078 and 146.038 K join to 97.1356 K, share of the plate 0.66514', () => {
    near(heatFactor(0, 'uniform', 'maximum') * ((143.4856e6 * 94.2e-6) / 46.6), 290.078, 1e-5)
    near(heatFactor(flash.peclet, 'uniform', 'maximum') * ((143.4856e6 * 94.2e-6) / 46.6), 146.038, 1e-5)
    near(flash.maximum.rise, 97.1356, 1e-5)
    near(flash.maximum.shareToMoving, 0.66514, 1e-5)
    expect(flash.maximum.postulate).toContain('Blok')
  })
  test('Jaeger: means 246.213 and 95.1008 K join to 68.6027 K, share of the plate 0.72137', () => {
    near(heatFactor(0, 'uniform', 'mean') * ((143.4856e6 * 94.2e-6) / 46.6), 246.213, 1e-5)
    near(heatFactor(flash.peclet, 'uniform', 'mean') * ((143.4856e6 * 94.2e-6) / 46.6), 95.1008, 1e-5)
    near(flash.mean.rise, 68.6027, 1e-5)
    near(flash.mean.shareToMoving, 0.72137, 1e-5)
    expect(flash.mean.postulate).toContain('Jaeger')
  })
  test('the two postulates differ, and a thin coating leaks', () => {
    expect(flash.doubts.map(({ kind }) => kind)).toEqual(['lawsDiffer'])
    const coated = flashTemperature({ ...heat, thickness: 50e-6 })
    expect(coated.doubts.map(({ kind }) => kind)).toEqual(['lawsDiffer', 'heatLeaks'])
    expect(flashTemperature({ ...heat, slidingSpeed: 1e-3 }).doubts).toEqual([])
  })
  test('at rest equal bodies share alike, and nothing is heated', () => {
    const still = flashTemperature({ ...heat, slidingSpeed: 0 })
    expect(still.maximum).toMatchObject({ rise: 0, shareToMoving: 0.5 })
  })
})

test('a poor conductor sends the heat into the other body', () => {
  const flash = flashTemperature({
    friction: 0.2,
    load: 5,
    slidingSpeed: 0.1,
    contactRadius: 3e-4,
    resting: polymer,
    moving: bearingSteel,
  })
  expect(flash.maximum.shareToMoving).toBeGreaterThan(0.98)
})

test.for([
  [() => heatFactor(-1, 'uniform', 'mean'), /Peclet/],
  [() => heatFactor(Number.NaN, 'uniform', 'mean'), /Peclet/],
  [() => diffusivity({ ...polymer, density: 0 }), /density/],
  [() => diffusivity({ ...polymer, conductivity: Number.NaN }), /conductivity/],
  [() => diffusivity({ ...polymer, heatCapacity: -1 }), /heat capacity/],
  [() => pecletNumber(-1, 1, polymer), /speed/],
  [() => pecletNumber(1, 0, polymer), /contact radius/],
] as const)('refused: %s', ([call, words]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(words)
})
