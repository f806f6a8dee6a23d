import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type FlowLawName, flowLawNames, flowLaws, flowViscosity } from '../../../../src/core/material/index.ts'
import { near } from '../near.ts'

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Parameters of each law at random, in its order; fast viscosity is a share of that at rest. */
const parametersOf: Readonly<Record<FlowLawName, fc.Arbitrary<readonly number[]>>> = {
  newtonian: fc.tuple(positive(1e-3, 1e3)),
  powerLaw: fc.tuple(positive(1e-3, 1e3), positive(0.1, 1.5)),
  herschelBulkley: fc.tuple(positive(0, 100), positive(1e-3, 1e3), positive(0.1, 1.5)),
  cross: fc
    .tuple(positive(1e-3, 1e3), positive(0, 0.9), positive(1e-3, 1e3), positive(0.1, 1.5))
    .map(([rest, share, time, exponent]) => [rest, rest * share, time, exponent]),
  carreauYasuda: fc
    .tuple(positive(1e-3, 1e3), positive(0, 0.9), positive(1e-3, 1e3), positive(0, 0.95), positive(0.3, 5))
    .map(([rest, share, ...others]) => [rest, rest * share, ...others]),
}

const named = (name: FlowLawName, values: readonly number[]) =>
  Object.fromEntries(flowLaws[name].parameters.map((parameter, j) => [parameter.name, values[j]]))

describe.each(flowLawNames)('%s', (name) => {
  const law = flowLaws[name]
  const rates = positive(-3, 5).map((power) => 10 ** power)

  test('slopes are those of the viscosity (central differences)', () => {
    fc.assert(
      fc.property(parametersOf[name], rates, (values, rate) => {
        const slopes = new Float64Array(values.length)
        law.slopes(values, rate, slopes)
        const size = law.viscosity(values, rate)
        for (let j = 0; j < values.length; j++) {
          const step = 1e-5 * Math.max(values[j], 1e-3)
          const moved = (by: number) =>
            law.viscosity(
              values.map((value, k) => (k === j ? value + by : value)),
              rate,
            )
          const difference = (moved(step) - moved(-step)) / (2 * step)
          expect(Math.abs(slopes[j] - difference)).toBeLessThan(1e-5 * Math.abs(difference) + (1e-9 * size) / step)
        }
      }),
    )
  })

  test('is continuous and positive, and stress rises with the rate', () => {
    fc.assert(
      fc.property(parametersOf[name], rates, (values, rate) => {
        const stress = (rate: number) => rate * flowViscosity(name, named(name, values), rate)
        expect(stress(rate)).toBeGreaterThan(0)
        // Cross with an exponent over 1 has a stress that falls: excluded here, allowed in a fit.
        fc.pre(name !== 'cross' || values[3] <= 1)
        expect(stress(rate * 1.01)).toBeGreaterThanOrEqual(stress(rate) * (1 - 1e-12))
      }),
    )
  })
})

describe('limits that follow from the laws', () => {
  const plateaus = { restViscosity: 10, fastViscosity: 0.01, time: 0.5 }

  test('Cross: rest, fast, and half way at λγ̇ = 1', () => {
    const at = (rate: number) => flowViscosity('cross', { ...plateaus, exponent: 0.8 }, rate)
    expect(at(0)).toBe(10)
    near(at(1e-12), 10, 1e-8)
    near(at(1e20), 0.01, 1e-6)
    near(at(2), (10 + 0.01) / 2, 1e-14)
  })

  test('Carreau (sharpness 2): 2^((n−1)/2) of the way at λγ̇ = 1; n = 1 does not thin', () => {
    const at = (rate: number, exponent: number) =>
      flowViscosity('carreauYasuda', { ...plateaus, exponent, sharpness: 2 }, rate)
    near(at(2, 0.4), 0.01 + 9.99 * 2 ** -0.3, 1e-14)
    expect(at(0, 0.4)).toBe(10)
    near(at(1e20, 0.4), 0.01, 1e-6)
    near(at(1e6, 1), 10, 1e-14)
  })

  test('between the plateaus both become power laws: η₀(λγ̇)^−m and η₀(λγ̇)^(n−1)', () => {
    const noFloor = { ...plateaus, fastViscosity: 0 }
    near(flowViscosity('cross', { ...noFloor, exponent: 0.7 }, 1e9), 10 * 0.5e9 ** -0.7, 1e-5)
    near(flowViscosity('carreauYasuda', { ...noFloor, exponent: 0.3, sharpness: 1.5 }, 1e9), 10 * 0.5e9 ** -0.7, 1e-5)
  })

  test('Herschel–Bulkley without a yield stress is the power law, with exponent 1 Bingham', () => {
    for (const rate of [0.01, 1, 1e4]) {
      near(
        flowViscosity('herschelBulkley', { yieldStress: 0, consistency: 2, exponent: 0.4 }, rate),
        flowViscosity('powerLaw', { consistency: 2, exponent: 0.4 }, rate),
        1e-15,
      )
      near(flowViscosity('herschelBulkley', { yieldStress: 5, consistency: 2, exponent: 1 }, rate), 5 / rate + 2, 1e-15)
    }
  })

  test('what has no viscosity throws', () => {
    expect(() => flowViscosity('powerLaw', { consistency: 2, exponent: 0.4 }, 0)).toThrow(
      'no viscosity at a shear rate of 0',
    )
    expect(() => flowViscosity('cross', { ...plateaus, exponent: 0.4 }, -1)).toThrow('shear rate must be zero or more')
    expect(() => flowViscosity('cross', { ...plateaus, exponent: 0.4 }, Number.NaN)).toThrow('got NaN 1/s')
    expect(() => flowViscosity('cross', plateaus, 1)).toThrow('exponent must be 0')
    expect(() => flowViscosity('newtonian', { viscosity: 1, time: 1 }, 1)).toThrow('time is none of its parameters')
    expect(() => flowViscosity('newtonian', { viscosity: 0 }, 1)).toThrow('viscosity must be')
  })
})
