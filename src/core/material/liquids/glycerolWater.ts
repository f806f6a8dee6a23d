import type { Kelvin, PascalSecond, Ratio } from '../../terms/index.ts'
import { mustLieWithin } from '../refuse.ts'
import { zeroCelsius } from './kelvin.ts'

/** Temperatures of the formula for viscosity, K. */
export const glycerolWaterTemperature = { low: zeroCelsius, high: zeroCelsius + 100 }

/** Temperatures to which the formula for density was fitted, K. Beyond, it is a straight line and still near the tables. */
export const glycerolWaterDensityTemperature = { low: zeroCelsius + 15, high: zeroCelsius + 30 }

/** Mass fractions of glycerol: from water to pure. */
export const massFractions = { low: 0, high: 1 }

/**
 * Viscosity of glycerol and water, Pa·s; `massFraction` of glycerol 0 to 1. Cheng 2008, Ind. Eng. Chem. Res. 47:3285,
 * equations 6, 21 and 22. 0 to 100 °C; throws RangeError outside. Within 4 % of the tables of Segur & Oberstar 1951, worst
 * near 70 % and 10 °C.
 */
export function glycerolWaterViscosity(temperature: Kelvin, massFraction: Ratio): PascalSecond {
  mustLieWithin(temperature, glycerolWaterTemperature, ['temperature of glycerol and water', 'K'])
  mustLieWithin(massFraction, massFractions, ['mass fraction of glycerol', ''])
  const t = temperature - zeroCelsius
  const water = 1.79e-3 * Math.exp(((-1230 - t) * t) / (36_100 + 360 * t))
  const glycerol = 12.1 * Math.exp(((-1233 + t) * t) / (9900 + 70 * t))
  const a = 0.705 - 0.0017 * t
  const b = (4.9 + 0.036 * t) * a ** 2.5
  const rest = 1 - massFraction
  const power = rest + (a * b * massFraction * rest) / (a * massFraction + b * rest)
  return water ** power * glycerol ** (1 - power)
}

/**
 * Density of glycerol and water, kg/m³: that of the two beside each other times their contraction. Volk & Kähler 2018, Exp.
 * Fluids 59:75 (as public programs have it). Fitted from 15 to 30 °C, where it stays within 5 parts in 10,000 of Bosart &
 * Snoddy 1928; allowed from 0 to 100 °C. Throws RangeError outside.
 */
export function glycerolWaterDensity(temperature: Kelvin, massFraction: Ratio): number {
  mustLieWithin(temperature, glycerolWaterTemperature, ['temperature of glycerol and water', 'K'])
  mustLieWithin(massFraction, massFractions, ['mass fraction of glycerol', ''])
  const t = temperature - zeroCelsius
  const glycerol = 1273.3 - 0.6121 * t
  const water = 1000 * (1 - (Math.abs(t - 3.98) / 615) ** 1.71)
  const beside = 1 / (massFraction / glycerol + (1 - massFraction) / water)
  // At a mass fraction of 1 the sine is a rounding error that may be negative, which no power takes.
  const bend = Math.max(0, Math.sin(massFraction ** 1.31 * Math.PI)) ** 0.81
  return beside * (1 + (1.78e-6 * t ** 2 - 1.82e-4 * t + 1.41e-2) * bend)
}
