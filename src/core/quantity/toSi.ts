import type { Unit } from './unitsOf.ts'

/**
 * A value in SI. Decimal factors are applied as a whole number over a power of ten, so that 6.35 mm is the double
 * nearest to 0.00635 m and not its neighbour. For columns of many rows `value * factor + offset` is quicker and as
 * good to one part in 10¹⁵.
 */
export function toSi(value: number, unit: Unit): number {
  const { above, below } = decimalFraction(unit.factor)
  const scaled = (value * above) / below
  return unit.offset === 0 ? scaled : addDecimal(scaled, unit.offset)
}

/** The inverse of `toSi`, to rounding. */
export function fromSi(value: number, unit: Unit): number {
  const shifted = unit.offset === 0 ? value : addDecimal(value, -unit.offset)
  const { above, below } = decimalFraction(unit.factor)
  return (shifted * below) / above
}

/** `factor` as whole / 10ⁿ where that is exact and short (0.0254 is 254/10⁴), else factor / 1. */
function decimalFraction(factor: number): { above: number; below: number } {
  for (let digits = 0; digits <= 12; digits++) {
    const below = 10 ** digits
    const above = Math.round(factor * below)
    if (above >= 1 && above < 1e9 && above / below === factor) return { above, below }
  }
  return { above: factor, below: 1 }
}

/** A sum freed of the last bits that binary adds to decimal numbers: 23 + 273.15 is 296.15. */
const addDecimal = (a: number, b: number): number => Number((a + b).toPrecision(15))
