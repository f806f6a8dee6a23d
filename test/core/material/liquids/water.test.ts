import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  findLiquid,
  waterDensity,
  waterDensityUnderPressure,
  waterViscosity,
  waterViscosityAtDensity,
} from '../../../../src/core/material/index.ts'
import { good, near, zero } from '../near.ts'

describe('IAPWS R12-08, table 4 (critical term 1)', () => {
  test.for([
    [298.15, 998, 889.7351],
    [298.15, 1200, 1437.649467],
    [373.15, 1000, 307.883622],
    [433.15, 1, 14.538324],
    [433.15, 1000, 217.685358],
    [873.15, 1, 32.619287],
    [873.15, 100, 35.802262],
    [873.15, 600, 77.430195],
    [1173.15, 1, 44.217245],
    [1173.15, 100, 47.640433],
    [1173.15, 400, 64.154608],
  ] as const)('%d K, %d kg/m³: %d µPa·s', ([temperature, density, want]) => {
    expect(Math.abs(1e6 * waterViscosityAtDensity(temperature, density) - want)).toBeLessThan(1e-6)
  })
})

describe('IAPWS SR6-08(2011), table 8 (liquid at 0.1 MPa)', () => {
  test.for([
    [260, '997.068360', '3058.36075'],
    [298.15, '997.047013', '889.996774'],
    [375, '957.009710', '276.207245'],
  ] as const)('%d K: %s kg/m³, %s µPa·s', ([temperature, density, viscosity]) => {
    expect(waterDensity(temperature).toFixed(6)).toBe(density)
    expect((1e6 * waterViscosity(temperature)).toPrecision(9)).toBe(viscosity)
  })

  test.for([
    [0, 1791.78],
    [10, 1305.9],
    [20, 1001.57],
    [30, 797.21],
    [37, 691.3],
    [40, 652.73],
    [60, 466.04],
    [80, 354.05],
    [100, 281.58],
  ] as const)('equation 7, worked out apart: %d °C %d µPa·s', ([celsius, want]) => {
    expect(Math.abs(1e6 * waterViscosity(zero + celsius) - want)).toBeLessThan(0.0051)
  })

  test('20 °C: 1.0016 mPa·s (ISO/TR 3666, from memory); old tables lie 0.7 and 0.6 % higher (International Critical Tables)', () => {
    near(waterViscosity(zero + 20), 1.0016e-3, 3e-4)
    near(1.0087e-3 / waterViscosity(zero + 20), 1.007, 5e-4)
    near(0.8949e-3 / waterViscosity(zero + 25), 1.006, 6e-4)
  })

  test('the two releases agree to 5 parts in 100,000 from 0 to 100 °C', () => {
    for (let celsius = 0; celsius <= 100; celsius++) {
      const temperature = zero + celsius
      near(waterViscosityAtDensity(temperature, waterDensity(temperature)), waterViscosity(temperature), 5e-5)
    }
  })
})

test("Perry's Chemical Engineers' Handbook, 9th ed., table 2-135, saturated liquid: within a tenth of the 1 % that both state", () => {
  const molarMass = 18.015268e-3
  for (const [temperature, molesPerLitre, microPascalSecond] of [
    [273.16, 55.497, 1791.2],
    [280, 55.501, 1433.7],
    [290, 55.44, 1084],
    [300, 55.315, 853.84],
    [310, 55.139, 693.54],
    [320, 54.919, 577.02],
    [340, 54.371, 421.97],
    [360, 53.698, 326.1],
    [380, 52.918, 262.69],
  ] as const) {
    near(waterViscosityAtDensity(temperature, molesPerLitre * 1e3 * molarMass), microPascalSecond * 1e-6, 1e-3)
  }
})

describe('density under pressure', () => {
  test.for([
    [300, 3e6, '0.00100215168'],
    [300, 80e6, '0.000971180894'],
    [500, 3e6, '0.00120241800'],
  ] as const)('IAPWS R7-97, table 5: %d K, %d Pa: %s m³/kg', ([temperature, pressure, volume]) => {
    expect((1 / waterDensityUnderPressure(temperature, pressure)).toPrecision(9)).toBe(volume)
  })

  test.for([
    [300, 0.099241835e6, 996.556],
    [300, 20.0022515e6, 1005.308],
  ] as const)('IAPWS-95, table 7: %d K, %d Pa: %d kg/m³ (the industrial formulation stays within 0.001 %%)', (row) => {
    const [temperature, pressure, density] = row
    near(waterDensityUnderPressure(temperature, pressure), density, 1e-5)
  })
})

describe('water as a liquid', () => {
  const water = good(findLiquid('Wasser'))

  test('thins with warmth, and a little pressure changes little', () => {
    fc.assert(
      fc.property(fc.double({ min: 273.2, max: 383, noNaN: true }), (temperature) => {
        const here = good(water.viscosity(temperature)).viscosity
        expect(good(water.viscosity(temperature + 0.1)).viscosity).toBeLessThan(here)
        // At 110 °C and 0.1 MPa water is superheated and region 1 is left by a hair.
        near(good(water.viscosity(temperature, { pressure: 1 })).viscosity, here, 6e-5)
      }),
    )
  })

  test('below 33 °C pressure first thins it, which no law with one coefficient knows (Bett & Cappi 1965, from memory)', () => {
    const at = (celsius: number, pressure: number) => good(water.viscosity(zero + celsius, { pressure })).viscosity
    expect(at(5, 5e7)).toBeLessThan(at(5, 0))
    expect(at(60, 5e7)).toBeGreaterThan(at(60, 0))
  })

  test('formulas refuse what lies outside', () => {
    expect(() => waterViscosity(400)).toThrow('temperature of water must be 253.15 to 383.15 K, got 400 K')
    expect(() => waterDensity(Number.NaN)).toThrow('got NaN K')
    expect(() => waterViscosityAtDensity(300, -1)).toThrow('density of water must be 0 to 1300 kg/m³, got -1 kg/m³')
    expect(() => waterDensityUnderPressure(300, 2e8)).toThrow('got 200000000 Pa')
  })
})
