import type { Kelvin } from '../../terms/index.ts'
import { mustBePositive } from '../refuse.ts'

/** Kinematic viscosity (m²/s) at a temperature (K). */
export interface KinematicPoint {
  readonly temperature: Kelvin
  readonly viscosity: number
}

/** A and B of lg lg(ν + 0.7) = A − B lg T, with ν in mm²/s and T in K. */
export interface WaltherLine {
  readonly intercept: number
  readonly slope: number
}

/** Kinematic viscosities for which the form with 0.7 stands in ASTM D341, m²/s: 2 to 2·10⁷ mm²/s (from memory). */
export const waltherRange = { low: 2e-6, high: 20 }

/**
 * The line through two measured points. Walther 1931; ASTM D341 (DIN 51563, ISO 3448 annex), with T = t + 273.15. Throws
 * RangeError unless viscosity falls with temperature and both are above 0.3 mm²/s, where the form ends.
 */
export function waltherLine(first: KinematicPoint, second: KinematicPoint): WaltherLine {
  const [cold, hot] = first.temperature < second.temperature ? [first, second] : [second, first]
  mustBePositive(cold.temperature, 'temperature', 'K')
  const falls = hot.temperature > cold.temperature && hot.viscosity < cold.viscosity
  if (!(falls && hot.viscosity > 0.3e-6 && cold.viscosity < Number.POSITIVE_INFINITY)) {
    throw new RangeError(
      `kinematic viscosity must fall with temperature and stay above 0.3e-6 m²/s, got ${cold.viscosity} m²/s at ` +
        `${cold.temperature} K and ${hot.viscosity} m²/s at ${hot.temperature} K`,
    )
  }
  const slope = (doubleLog(cold.viscosity) - doubleLog(hot.viscosity)) / Math.log10(hot.temperature / cold.temperature)
  return { intercept: doubleLog(cold.viscosity) + slope * Math.log10(cold.temperature), slope }
}

/** Kinematic viscosity on the line, m²/s. Throws RangeError where it is not a positive finite number. */
export function waltherViscosity({ intercept, slope }: WaltherLine, temperature: Kelvin): number {
  mustBePositive(temperature, 'temperature', 'K')
  const viscosity = 1e-6 * (10 ** (10 ** (intercept - slope * Math.log10(temperature))) - 0.7)
  mustBePositive(viscosity, `kinematic viscosity at ${temperature} K`, 'm²/s')
  return viscosity
}

/** Temperature (K) at which the line has a kinematic viscosity (m²/s, above 0.3e-6): `waltherViscosity` backwards. */
export function waltherTemperature({ intercept, slope }: WaltherLine, viscosity: number): Kelvin {
  if (!(viscosity > 0.3e-6 && viscosity < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`kinematic viscosity must be more than 0.3e-6 m²/s and finite, got ${viscosity} m²/s`)
  }
  return 10 ** ((intercept - doubleLog(viscosity)) / slope)
}

const doubleLog = (viscosity: number): number => Math.log10(Math.log10(viscosity * 1e6 + 0.7))
