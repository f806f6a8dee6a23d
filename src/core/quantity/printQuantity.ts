import type { Dimension } from './dimension.ts'
import { readableUnits } from './readableUnits.ts'
import { fromSi } from './toSi.ts'
import { unitNamed } from './unitNamed.ts'
import type { Unit } from './unitsOf.ts'

/** How a quantity is printed. */
export interface PrintOptions {
  /** Significant digits, 1 to 17. Default 4. */
  readonly digits?: number
  /** Print in this unit instead of the most readable one. */
  readonly unit?: string
}

/**
 * An SI value for people: `6.35 mm`, `25 °C`, `0.5 %`. It is rounded before its unit is chosen, so that 0.99999 mm/s is 1 mm/s;
 * not so a temperature, whose degrees count from elsewhere. Throws RangeError for NaN and infinities.
 */
export function printQuantity(value: number, dimension: Dimension, options: PrintOptions = {}): string {
  if (!Number.isFinite(value)) throw new RangeError(`${dimension} must be finite to be printed, got ${value}`)
  const digits = options.digits ?? 4
  const rounded = dimension === 'temperature' ? value : Number(value.toPrecision(digits))
  const unit = options.unit === undefined ? readableUnit(rounded, dimension) : unitNamed(options.unit, dimension)
  return withUnit(plainText(Number(fromSi(value, unit).toPrecision(digits))), unit)
}

/** The unit of the ladder in which a value is read best: the largest that leaves it at 1 or more. */
export function readableUnit(value: number, dimension: Dimension): Unit {
  const ladder = readableUnits[dimension].ladder.map((name) => unitNamed(name, dimension))
  if (dimension === 'ratio') return Math.abs(value) < 1 ? ladder[0] : ladder[1]
  const fitting = ladder.filter((unit) => Math.abs(value) >= unit.factor * (1 - 1e-9))
  if (value === 0) return unitNamed(readableUnits[dimension].usual, dimension)
  return fitting[fitting.length - 1] ?? ladder[0]
}

/** Number and unit with a blank between; the sign of degrees follows without one, and a plain number bears none. */
export function withUnit(number: string, unit: Unit): string {
  if (unit.text === '1') return number
  return unit.text === '°' ? `${number}°` : `${number} ${unit.text}`
}

/** A number in decimals where that is short, else with an exponent; never "-0". */
export function plainText(value: number): string {
  if (value === 0) return '0'
  const size = Math.abs(value)
  return size >= 1e-6 && size < 1e15 ? String(value) : value.toExponential()
}
