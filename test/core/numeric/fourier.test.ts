import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fourierTransform, powerOfTwoFrom, randomFrom } from '../../../src/core/numeric/index.ts'

test.for([1, 2, 4, 32])('length %d: the sum Σ x[n] e^(−2πi kn/N) itself', (size) => {
  const random = randomFrom(size)
  const real = random.fillNormal(new Float64Array(size))
  const imaginary = random.fillNormal(new Float64Array(size))
  const want = Array.from({ length: size }, (_, k) => {
    let re = 0
    let im = 0
    for (let n = 0; n < size; n++) {
      const angle = (-2 * Math.PI * k * n) / size
      re += real[n] * Math.cos(angle) - imaginary[n] * Math.sin(angle)
      im += real[n] * Math.sin(angle) + imaginary[n] * Math.cos(angle)
    }
    return [re, im]
  })
  fourierTransform(real, imaginary)
  for (const [k, [re, im]] of want.entries()) {
    expect(real[k]).toBeCloseTo(re, 12)
    expect(imaginary[k]).toBeCloseTo(im, 12)
  }
})

describe('identities', () => {
  test('energy is kept (Parseval), twice forwards turns the order round', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), fc.nat(), (bits, seed) => {
        const size = 2 ** bits
        const before = randomFrom(seed).fillNormal(new Float64Array(size))
        const real = Float64Array.from(before)
        const imaginary = new Float64Array(size)
        fourierTransform(real, imaginary)
        const energy = real.reduce((sum, re, i) => sum + re * re + imaginary[i] ** 2, 0) / size
        expect(energy / before.reduce((sum, x) => sum + x * x, 0)).toBeCloseTo(1, 12)
        fourierTransform(real, imaginary)
        for (let i = 0; i < size; i++) expect(real[i] / size).toBeCloseTo(before[(size - i) % size], 12)
      }),
      { numRuns: 30 },
    )
  })
})

test('powers of two', () => expect([1, 2, 3, 1000, 1024].map(powerOfTwoFrom)).toEqual([1, 2, 4, 1024, 1024]))

test.for([
  ['length 12', () => fourierTransform(new Float64Array(12), new Float64Array(12)), 'power of two, got 12'],
  ['unlike parts', () => fourierTransform(new Float64Array(8), new Float64Array(4)), 'has 4 values, real has 8'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
