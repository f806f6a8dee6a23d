import type { Kelvin, PascalSecond } from '../../terms/index.ts'
import { mustLieWithin } from '../refuse.ts'

/** Temperatures of both correlations below, K: liquid water at 0.1 MPa, supercooled and superheated too. */
export const waterAtAirPressureTemperature = { low: 253.15, high: 383.15 }

/**
 * Viscosity of liquid water at 0.1 MPa, Pa·s. IAPWS SR6-08(2011), Supplementary Release on Properties of Liquid Water at
 * 0.1 MPa, equation 7. 253.15 to 383.15 K; throws RangeError outside.
 */
export function waterViscosity(temperature: Kelvin): PascalSecond {
  mustLieWithin(temperature, waterAtAirPressureTemperature, ['temperature of water', 'K'])
  const x = temperature / 300
  return 1e-6 * (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40)
}

/** Power and coefficient of the terms in 10/(593 − T) and in 10/(T − 232) of equation 2. */
const hotTerms = [
  [4, 6.74458446e3],
  [5, -2.22521604e5],
  [7, 1.00231247e8],
  [8, -1.63552118e9],
  [9, 8.32299658e9],
] as const
const coldTerms = [
  [1, 5.78545292e-3],
  [2, -1.53195665e-2],
  [3, 3.11337859e-2],
  [4, -4.23546241e-2],
  [5, 3.38713507e-2],
  [6, -1.19946761e-2],
] as const

/**
 * Density of liquid water at 0.1 MPa, kg/m³. IAPWS SR6-08(2011), equation 2 (specific volume). 253.15 to 383.15 K; throws
 * RangeError outside.
 */
export function waterDensity(temperature: Kelvin): number {
  mustLieWithin(temperature, waterAtAirPressureTemperature, ['temperature of water', 'K'])
  const hot = 10 / (593 - temperature)
  const cold = 10 / (temperature - 232)
  const sum =
    hotTerms.reduce((sum, [power, a]) => sum + a * hot ** power, 1.93763157e-2) +
    coldTerms.reduce((sum, [power, b]) => sum + b * cold ** power, 0)
  return 1 / (gasConstant * 10 * 1e-5 * sum)
}

/** Of water, J/(kg·K), as the release takes it. */
const gasConstant = 461.51805
