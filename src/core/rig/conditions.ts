import type { Kelvin, Newton, Ratio } from '../terms/index.ts'

/** Gas constant, J/(mol·K): exact since 2019 (SI Brochure, 9th edition). */
export const gasConstant = 8.31446261815324

/** How friction depends on load and temperature: that of the law holds at the reference. */
export interface Conditions {
  /** a of µ ∝ F^(−a). */
  readonly loadExponent: number
  readonly referenceForce: Newton
  /** E of ln µ = const + E/(R·T), J/mol. */
  readonly activationEnergy: number
  readonly referenceTemperature: Kelvin
}

/** Factor on friction at an axial force and a temperature. */
export function conditionsFactor(conditions: Conditions, force: Newton, temperature: Kelvin): Ratio {
  const { loadExponent, referenceForce, activationEnergy, referenceTemperature } = conditions
  if (!(force > 0 && temperature > 0))
    throw new RangeError(`force and temperature must be above zero, got ${force} N, ${temperature} K`)
  const heat = (activationEnergy / gasConstant) * (1 / temperature - 1 / referenceTemperature)
  return (force / referenceForce) ** -loadExponent * Math.exp(heat)
}
