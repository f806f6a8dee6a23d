import type { Unit } from './unitsOf.ts'

/**
 * A value in SI. Where the unit is a whole part of the SI unit (mm, µN·m, %) it divides by the whole number,
 * so that 6.35 mm is the double nearest to 0.00635 m and not its neighbour.
 */
export function toSi(value: number, unit: Unit): number {
  const inverse = Math.round(1 / unit.factor)
  const scaled = inverse > 1 && 1 / inverse === unit.factor ? value / inverse : value * unit.factor
  return unit.offset === 0 ? scaled : addDecimal(scaled, unit.offset)
}

/** The inverse of `toSi`, to rounding. */
export function fromSi(value: number, unit: Unit): number {
  const shifted = unit.offset === 0 ? value : addDecimal(value, -unit.offset)
  const inverse = Math.round(1 / unit.factor)
  return inverse > 1 && 1 / inverse === unit.factor ? shifted * inverse : shifted / unit.factor
}

/** A sum freed of the last bits that binary adds to decimal numbers: 23 + 273.15 is 296.15. */
const addDecimal = (a: number, b: number): number => Number((a + b).toPrecision(15))
