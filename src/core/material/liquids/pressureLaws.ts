import type { Pascal, PascalSecond } from '../../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from '../refuse.ts'

/** A liquid at one temperature: viscosity at the pressure of the air (Pa·s) and d ln η/dp there (1/Pa). */
export interface PressureSensitive {
  readonly viscosity: PascalSecond
  readonly coefficient: number
}

/**
 * η₀e^(αp), Pa·s; `pressure` above that of the air. Barus 1893, Am. J. Sci. 45:87. Good to about 0.1 GPa, far too high beyond
 * 0.5 GPa. Throws RangeError where it overflows.
 */
export function barusViscosity({ viscosity, coefficient }: PressureSensitive, pressure: Pascal): PascalSecond {
  mustBePositive(viscosity, 'viscosity', 'Pa·s')
  mustNotBeNegative(coefficient, 'pressure–viscosity coefficient', '1/Pa')
  mustNotBeNegative(pressure, 'pressure', 'Pa')
  const pressed = viscosity * Math.exp(coefficient * pressure)
  mustBePositive(pressed, `viscosity at ${pressure} Pa`, 'Pa·s')
  return pressed
}

/** Roelands' exponent z from α: α = 5.1e-9·z(ln η₀ + 9.67), SI. Throws RangeError for η₀ of 6.3e-5 Pa·s and less. */
export function roelandsExponent({ viscosity, coefficient }: PressureSensitive): number {
  mustNotBeNegative(coefficient, 'pressure–viscosity coefficient', '1/Pa')
  return coefficient / (5.1e-9 * height(viscosity))
}

/**
 * exp(ln η₀ + (ln η₀ + 9.67)((1 + 5.1e-9·p)^z − 1)), Pa·s; `pressure` above that of the air. Roelands 1966, thesis, Delft.
 * Good to about 1 GPa. Has the slope of Barus' law at no pressure.
 */
export function roelandsViscosity(liquid: PressureSensitive, pressure: Pascal): PascalSecond {
  mustNotBeNegative(pressure, 'pressure', 'Pa')
  const z = roelandsExponent(liquid)
  const pressed = liquid.viscosity * Math.exp(height(liquid.viscosity) * ((1 + 5.1e-9 * pressure) ** z - 1))
  mustBePositive(pressed, `viscosity at ${pressure} Pa`, 'Pa·s')
  return pressed
}

/** ln η₀ + 9.67: how far the viscosity lies above that at which all of Roelands' isotherms meet. */
function height(viscosity: PascalSecond): number {
  const height = Math.log(viscosity) + 9.67
  mustBePositive(height, `ln η₀ + 9.67 for η₀ = ${viscosity} Pa·s`, '')
  return height
}
