import { linearInterpolant } from '../../numeric/index.ts'
import { doubtsFound, type Kelvin } from '../../terms/index.ts'
import { mustLieWithin } from '../refuse.ts'
import { checkedLiquid } from './checkedLiquid.ts'
import { zeroCelsius } from './kelvin.ts'
import type { Liquid } from './liquid.ts'
import { beyondNewtonian } from './newtonianLimit.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'
import { roelandsPressure, underPressure } from './underPressure.ts'

const room = zeroCelsius + 25

/** d ln ν/d(1/T), K: 763.1 per decade, as makers of silicone oils print it; from memory. */
const activation = 763.1 * Math.LN10
/** Relative standard uncertainty of that slope, wide enough for oils of 10 mm²/s. */
const activationUncertainty = 0.05
/** What a grade may be off, as the half-width of a rectangle. */
const gradeTolerance = 0.1
/** Stress to which they keep their viscosity, Pa: order of size, from memory. */
const newtonianStress = 1e4

/** Density at 25 °C, kg/m³, over the logarithm of the grade in mm²/s; from memory. */
const densityOfGrade = linearInterpolant([0.99, 1.699, 2, 3, 4, 5.01], [935, 960, 965, 970, 974, 977])

/** Grades that the formula is used for, m²/s at 25 °C. */
export const siliconeGrades = { low: 10e-6, high: 0.1 }

/**
 * A linear silicone oil (polydimethylsiloxane) of a nominal kinematic viscosity at 25 °C (m²/s), −25 to 200 °C:
 * lg ν = lg ν₂₅ + 763.1(1/T − 1/298.15). Typical, from memory. Throws RangeError outside 10 to 100,000 mm²/s.
 */
export function siliconeOil(grade: number): Liquid {
  mustLieWithin(grade, siliconeGrades, ['grade of silicone oil', 'm²/s'])
  const density = (temperature: Kelvin): number =>
    densityOfGrade(Math.log10(grade * 1e6)) * (1 - 9.3e-4 * (temperature - room))
  return checkedLiquid({
    name: `silicone oil ${Number((grade * 1e6).toPrecision(6))} mm²/s`,
    seen: 'memory',
    temperature: { low: zeroCelsius - 25, high: zeroCelsius + 200 },
    pressure: roelandsPressure,
    shearRate: null,
    pressureCoefficient: pressureCoefficients.siliconeOil,
    viscosityAt: ({ temperature, shearRate, pressure }) => {
      const cold = 1 / temperature - 1 / room
      const viscosity = grade * Math.exp(activation * cold) * density(temperature)
      const relative = Math.hypot(gradeTolerance / Math.sqrt(3), activationUncertainty * activation * cold)
      const plain = {
        viscosity,
        viscosityUncertainty: relative * viscosity,
        law: 'Arrhenius with the slope usual for silicone oils',
        source: 'formula of makers, grade and densities: from memory',
        valid: 'Linear polydimethylsiloxane of 10 to 100,000 mm²/s, −25 to 200 °C.',
        doubts: doubtsFound(beyondNewtonian(viscosity * shearRate, newtonianStress)),
      }
      return underPressure(plain, pressureCoefficients.siliconeOil, pressure)
    },
    densityAt: (temperature) => ({
      density: density(temperature),
      law: 'linear expansion',
      source: 'typical, from memory',
      valid: 'Good to 1 %.',
      doubts: [],
    }),
  })
}
