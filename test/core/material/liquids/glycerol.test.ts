import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findLiquid, glycerolWaterDensity, glycerolWaterViscosity } from '../../../../src/core/material/index.ts'
import { good, near, zero } from '../near.ts'

describe('Cheng 2008, Ind. Eng. Chem. Res. 47:3285, worked out apart', () => {
  const tenths = [
    [
      20,
      [
        1.00486, 1.297237, 1.741393, 2.455027, 3.684818, 6.00225, 10.911481, 23.093557, 60.859125, 223.745952,
        1413.830656,
      ],
    ],
    [
      25,
      [
        0.892739, 1.145562, 1.524509, 2.123806, 3.137221, 5.003687, 8.847849, 18.056885, 45.350401, 156.346974,
        905.68001,
      ],
    ],
  ] as const
  test.for(tenths)('%d °C, mass fraction 0 to 1', ([celsius, wanted]) => {
    for (const [i, want] of wanted.entries()) {
      expect(Math.abs(1e3 * glycerolWaterViscosity(zero + celsius, i / 10) - want)).toBeLessThan(1e-6)
    }
  })
  test('25 °C, 0.95: 346.125626 mPa·s', () => {
    expect(Math.abs(1e3 * glycerolWaterViscosity(zero + 25, 0.95) - 346.125626)).toBeLessThan(1e-6)
  })
})

test.for([
  [100, [12070, 1410, 284, 81.3, 31.9, 14.8]],
  [90, [1310, 219, 60, 22.5, 11, 6]],
  [80, [255, 60.1, 20.8, 9.42, 5.13, 3.18]],
  [70, [76, 22.5, 9.4, 4.86, 2.9, 1.93]],
  [60, [29.9, 10.8, 5.08, 2.85, 1.84, 1.28]],
  [50, [14.6, 6, 3.1, 1.86, 1.25, 0.91]],
  [40, [8.25, 3.72, 2.07, 1.3, 0.918, 0.668]],
  [20, [3.44, 1.76, 1.07, 0.731]],
  [10, [2.44, 1.31, 0.826, 0.575]],
] as const)('Segur & Oberstar 1951, Ind. Eng. Chem. 43:2117 (from memory), %d %%: within 4 %%', ([percent, wanted]) => {
  for (const [i, want] of wanted.entries()) {
    near(1e3 * glycerolWaterViscosity(zero + 20 * i, percent / 100), want, 0.04)
  }
})

// Percent, then g/cm³ at 15, 20, 25 and 30 °C.
test.for([
  [100, [1.26415, 1.26108, 1.25802, 1.25495]],
  [90, [1.2381, 1.2351, 1.232, 1.2289]],
  [80, [1.2116, 1.2085, 1.20545, 1.2024]],
  [70, [1.18415, 1.18125, 1.1784, 1.17565]],
  [60, [1.1565, 1.1538, 1.15105, 1.1483]],
  [50, [1.1287, 1.1263, 1.12375, 1.1211]],
  [40, [1.10145, 1.0993, 1.0971, 1.09475]],
  [30, [1.07455, 1.0727, 1.0707, 1.06855]],
  [20, [1.0484, 1.0469, 1.04525, 1.0435]],
  [10, [1.02325, 1.0221, 1.0207, 1.01905]],
  [0, [0.99913, 0.99823, 0.99708, 0.99568]],
] as const)(
  'Bosart & Snoddy 1928 (handbook of a maker of glycerol), %d %%: density within 5 parts in 10,000',
  (row) => {
    const [percent, wanted] = row
    for (const [i, want] of wanted.entries()) {
      near(glycerolWaterDensity(zero + 15 + 5 * i, percent / 100), 1e3 * want, 5e-4)
    }
  },
)

const temperatures = fc.double({ min: zero, max: zero + 99, noNaN: true })
const fractions = fc.double({ min: 0, max: 0.99, noNaN: true })

test('more glycerol and less warmth make it thicker and denser', () => {
  fc.assert(
    fc.property(temperatures, fractions, (temperature, fraction) => {
      const here = glycerolWaterViscosity(temperature, fraction)
      expect(glycerolWaterViscosity(temperature + 1, fraction)).toBeLessThan(here)
      expect(glycerolWaterViscosity(temperature, fraction + 0.01)).toBeGreaterThan(here)
      expect(glycerolWaterDensity(temperature, fraction + 0.01)).toBeGreaterThan(
        glycerolWaterDensity(temperature, fraction),
      )
    }),
  )
})

describe('as a liquid', () => {
  test('"Glycerin 60,5 %" is a share of mass, "glycerol" the pure one', () => {
    const mixed = good(findLiquid('Glycerin 60,5 %'))
    expect(mixed.name).toBe('glycerol 60.5 % in water')
    near(good(mixed.viscosity(zero + 25)).viscosity, glycerolWaterViscosity(zero + 25, 0.605), 1e-15)
    near(good(good(findLiquid('glycerol')).viscosity(zero + 20)).viscosity, 1.41, 0.04)
    expect(findLiquid('glycerol 50 % v/v').ok).toBe(false)
  })

  test('its uncertainty is that of 4 % as a rectangle; density outside 15 to 30 °C is doubted', () => {
    const liquid = good(findLiquid('glycerol 50 %'))
    const { viscosity, viscosityUncertainty } = good(liquid.viscosity(zero + 25))
    near((viscosityUncertainty ?? 0) / viscosity, 0.04 / Math.sqrt(3), 1e-12)
    expect(good(liquid.density(zero + 25)).doubts).toEqual([])
    expect(good(liquid.density(zero + 60)).doubts.map(({ kind }) => kind)).toEqual(['outsideFit'])
  })

  test('formulas refuse what lies outside', () => {
    expect(() => glycerolWaterViscosity(zero - 1, 0.5)).toThrow('must be 273.15 to 373.15 K')
    expect(() => glycerolWaterViscosity(zero, 1.01)).toThrow('mass fraction of glycerol must be 0 to 1, got 1.01')
    expect(() => glycerolWaterDensity(zero, Number.NaN)).toThrow('got NaN')
  })
})
