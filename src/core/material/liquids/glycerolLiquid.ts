import { doubtAbove, doubtBelow, doubtsFound, type Kelvin, type Ratio } from '../../terms/index.ts'
import { type KnownValue, known } from '../knownValue.ts'
import { mustLieWithin } from '../refuse.ts'
import { checkedLiquid } from './checkedLiquid.ts'
import {
  glycerolWaterDensity,
  glycerolWaterDensityTemperature,
  glycerolWaterTemperature,
  glycerolWaterViscosity,
  massFractions,
} from './glycerolWater.ts'
import type { Liquid } from './liquid.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'
import { roelandsPressure, underPressure } from './underPressure.ts'

/** Largest distance of Cheng's formula from the tables of 1951, taken as the half-width of a rectangle. */
const halfWidth = 0.04

/** Glycerol and water at a mass fraction of glycerol from 0 to 1 (RangeError outside). Glycerol drinks water from the air: cover it. */
export function glycerolLiquid(massFraction: Ratio): Liquid {
  mustLieWithin(massFraction, massFractions, ['mass fraction of glycerol', ''])
  const coefficient = coefficientOf(massFraction)
  const percent = Number((100 * massFraction).toPrecision(6))
  return checkedLiquid({
    name: massFraction === 1 ? 'glycerol' : `glycerol ${percent} % in water`,
    seen: 'source',
    temperature: glycerolWaterTemperature,
    pressure: roelandsPressure,
    shearRate: null,
    pressureCoefficient: coefficient,
    viscosityAt: ({ temperature, pressure }) => {
      const viscosity = glycerolWaterViscosity(temperature, massFraction)
      const plain = {
        viscosity,
        viscosityUncertainty: (viscosity * halfWidth) / Math.sqrt(3),
        law: 'Cheng',
        source:
          'Cheng 2008, Ind. Eng. Chem. Res. 47:3285; uncertainty from its distance to Segur & Oberstar 1951 (from memory)',
        valid: '0 to 100 °C at the mass fraction stated: 1 % more water thins pure glycerol by a fifth.',
        doubts: [],
      }
      return underPressure(plain, coefficient, pressure)
    },
    densityAt: (temperature) => ({
      density: glycerolWaterDensity(temperature, massFraction),
      law: 'ideal mixing with contraction',
      source: 'Volk & Kähler 2018, Exp. Fluids 59:75',
      valid: 'Fitted from 15 to 30 °C, there within 5 parts in 10,000 of Bosart & Snoddy 1928.',
      doubts: doubtsFound(...outsideFit(temperature)),
    }),
  })
}

const outsideFit = (temperature: Kelvin) => {
  const say = (seen: string) =>
    `At ${seen} K the formula for density runs outside the 288 to 303 K to which it was fitted; expect errors of some tenths of a percent.`
  const { low, high } = glycerolWaterDensityTemperature
  return [
    doubtBelow({ kind: 'outsideFit', seen: temperature, limit: low, say }),
    doubtAbove({ kind: 'outsideFit', seen: temperature, limit: high, say }),
  ]
}

/** Between the two, nobody's law: linear in the mass fraction, with the span of both. */
function coefficientOf(massFraction: Ratio): KnownValue {
  const { water, glycerol } = pressureCoefficients
  if (massFraction === 0) return water
  if (massFraction === 1) return glycerol
  const value = water.value + massFraction * (glycerol.value - water.value)
  return known([water.low, value, glycerol.high], {
    source: 'between water and glycerol, linear in the mass fraction; no source for mixtures',
    seen: 'memory',
  })
}
