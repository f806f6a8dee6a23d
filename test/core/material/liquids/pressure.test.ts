import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  barusViscosity,
  findLiquid,
  pressureCoefficients,
  roelandsExponent,
  roelandsViscosity,
} from '../../../../src/core/material/index.ts'
import { good, near } from '../near.ts'

const oil = { viscosity: 0.1, coefficient: 20e-9 }

test('Barus, α 20/GPa at 0.5 GPa: times 22026.5 (e¹⁰)', () => near(barusViscosity(oil, 0.5e9) / 0.1, 22026.5, 1e-5))

test('Roelands 1966 (from memory), η₀ 0.1 Pa·s, α 20/GPa: z 0.532286, times 6.0926, 1204.03, 150648', () => {
  near(roelandsExponent(oil), 0.532286, 1e-5)
  near(roelandsViscosity(oil, 0.1e9) / 0.1, 6.0926, 1e-5)
  near(roelandsViscosity(oil, 0.5e9) / 0.1, 1204.03, 1e-5)
  near(roelandsViscosity(oil, 1e9) / 0.1, 150648, 1e-5)
})

const liquids = fc.record({
  viscosity: fc.double({ min: 1e-3, max: 10, noNaN: true }),
  coefficient: fc.double({ min: 1e-9, max: 3e-8, noNaN: true }),
})

test('both laws start with the slope α; for z under 1 Barus is the higher', () => {
  fc.assert(
    fc.property(liquids, fc.double({ min: 1e7, max: 5e8, noNaN: true }), (liquid, pressure) => {
      const slope = (law: typeof barusViscosity) => Math.log(law(liquid, 1e3) / liquid.viscosity) / 1e3
      near(slope(barusViscosity), liquid.coefficient, 1e-4)
      near(slope(roelandsViscosity), liquid.coefficient, 1e-4)
      fc.pre(roelandsExponent(liquid) < 0.999)
      expect(roelandsViscosity(liquid, pressure)).toBeLessThan(barusViscosity(liquid, pressure))
    }),
  )
})

test.for([
  ['paraffinicOil', 18, 25],
  ['naphthenicOil', 25, 35],
  ['polyalphaolefin', 11, 17],
  ['ester', 6, 15],
  ['glycerol', 5, 6.5],
  ['polyglycol', 8, 12],
  ['siliconeOil', 12, 20],
  ['water', 0.4, 0.9],
] as const)('α of %s: %d to %d per GPa (typical, from memory)', ([family, low, high]) => {
  near(pressureCoefficients[family].low, low * 1e-9, 1e-12)
  near(pressureCoefficients[family].high, high * 1e-9, 1e-12)
})

describe('liquids under pressure', () => {
  test('show by how much the other law differs, and carry the span of α', () => {
    const oil = good(findLiquid('ISO VG 32'))
    const pressed = good(oil.viscosity(298.15, { pressure: 0.5e9 }))
    const plain = good(oil.viscosity(298.15))
    expect(pressed.doubts.map(({ kind }) => kind)).toEqual(['lawsDiffer'])
    expect(pressed.doubts[0].seen).toBeCloseTo(
      barusViscosity({ viscosity: plain.viscosity, coefficient: 21e-9 }, 0.5e9) / pressed.viscosity,
      9,
    )
    expect((pressed.viscosityUncertainty ?? 0) / pressed.viscosity).toBeGreaterThan(
      (plain.viscosityUncertainty ?? 0) / plain.viscosity,
    )
    expect(good(oil.viscosity(298.15, { pressure: 0 }))).toEqual(plain)
  })

  test('laws refuse what no liquid is', () => {
    expect(() => barusViscosity(oil, -1)).toThrow('pressure must be zero or more')
    expect(() => barusViscosity(oil, 1e12)).toThrow('viscosity at 1000000000000 Pa must be more than zero and finite')
    expect(() => roelandsViscosity({ viscosity: 5e-5, coefficient: 1e-8 }, 1e6)).toThrow('ln η₀ + 9.67')
    expect(() => roelandsViscosity(oil, Number.NaN)).toThrow('got NaN Pa')
  })
})
