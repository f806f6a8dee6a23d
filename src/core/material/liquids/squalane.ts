import { zeroCelsius } from './kelvin.ts'
import type { Liquid } from './liquid.ts'
import { oilLiquid } from './oilLiquid.ts'
import { pressureCoefficients } from './pressureCoefficients.ts'

/**
 * Squalane (2,6,10,15,19,23-hexamethyltetracosane), 0 to 100 °C, by Walther's line through typical values, chosen so that 25 °C
 * has the 28.2 mPa·s of the reference correlation (Comuñas et al. 2013, J. Phys. Chem. Ref. Data 42:033101, whose
 * coefficients are not here). From memory; 2 % is our guess.
 */
export const squalane: Liquid = oilLiquid({
  name: 'squalane',
  seen: 'memory',
  source: 'typical viscosities at 40 and 100 °C and density at 25 °C, from memory',
  points: [
    { temperature: zeroCelsius + 40, viscosity: 19.2e-6 },
    { temperature: zeroCelsius + 100, viscosity: 4.15e-6 },
  ],
  uncertainties: [0.02, 0.02],
  density: { density: 805, temperature: zeroCelsius + 25, expansion: 7.9e-4 },
  temperature: { low: zeroCelsius, high: zeroCelsius + 100 },
  pressureCoefficient: pressureCoefficients.squalane,
})
