import fc from 'fast-check'
import { expect, test } from 'vitest'
import { derSimonianLaird, mandelPaule, weightedMean } from '../../../src/core/stats/index.ts'
import { examples } from './examples.ts'

const { value, u } = examples.leadKeyComparison
const source = 'lead key comparison, computed independently'

test.for([
  ['weighted mean', weightedMean(value, u).mean, 2.939597],
  ['its uncertainty', weightedMean(value, u).standardUncertainty, 0.00831946],
  ['χ²', weightedMean(value, u).chiSquared, 20.4068548],
  ['Birge ratio', weightedMean(value, u).birgeRatio, 1.5971402],
  ['DerSimonian–Laird τ', derSimonianLaird(value, u).tau, 0.0348397],
  ['DerSimonian–Laird mean', derSimonianLaird(value, u).mean, 2.9588158],
  ['DerSimonian–Laird uncertainty', derSimonianLaird(value, u).standardUncertainty, 0.0174139],
  ['Mandel–Paule τ', mandelPaule(value, u).tau, 0.052012],
  ['Mandel–Paule mean', mandelPaule(value, u).mean, 2.9684771],
  ['Mandel–Paule uncertainty', mandelPaule(value, u).standardUncertainty, 0.0227474],
] as const)(`%s (${source})`, ([, got, want]) => {
  expect(Math.abs(got - want)).toBeLessThan(1e-6)
})

test('degrees of freedom are one less than the results', () => expect(weightedMean(value, u).degreesOfFreedom).toBe(8))

test('Mandel and Paule: with the scatter found, χ² is its degrees of freedom', () => {
  const result = fc.record({
    value: fc.double({ min: -10, max: 10, noNaN: true }),
    u: fc.double({ min: 1e-3, max: 5, noNaN: true }),
  })
  fc.assert(
    fc.property(fc.array(result, { minLength: 2, maxLength: 12 }), (results) => {
      const values = results.map((each) => each.value)
      const own = results.map((each) => each.u)
      const { tau } = mandelPaule(values, own)
      const free = results.length - 1
      const plain = weightedMean(values, own)
      const widened = own.map((each) => Math.hypot(each, tau))
      if (tau === 0) expect(plain.chiSquared).toBeLessThanOrEqual(free)
      else expect(weightedMean(values, widened).chiSquared / free).toBeCloseTo(1, 6)
    }),
  )
})

test('results that agree show no scatter', () => {
  expect(derSimonianLaird([1, 1.01, 0.99], [0.1, 0.1, 0.1]).tau).toBe(0)
  expect(mandelPaule([1, 1.01, 0.99], [0.1, 0.1, 0.1])).toMatchObject({ tau: 0, mean: expect.closeTo(1, 12) })
})

test.for([
  ['uncertainty 0', () => weightedMean([1, 2], [0.1, 0]), 'uncertainty 1 must be above zero, got 0'],
  ['unequal lists', () => mandelPaule([1, 2], [1]), 'got 2 and 1'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
