import type { Dimension } from './dimension.ts'
import { dimensionTable } from './dimension.ts'
import { plainText, readableUnit, withUnit } from './printQuantity.ts'
import { unitsFor } from './readableUnits.ts'
import { fromSi, toSi } from './toSi.ts'
import { unitNamed } from './unitNamed.ts'
import type { Unit } from './unitsOf.ts'

/**
 * The shortest text that `parseQuantity` reads back to the very same double: what setup files are written with.
 * The readable unit is preferred unless another one saves more than two letters. Throws RangeError for NaN and infinities.
 */
export function printExact(value: number, dimension: Dimension): string {
  if (!Number.isFinite(value)) throw new RangeError(`${dimension} must be finite to be printed, got ${value}`)
  const preferred = readableUnit(value, dimension)
  const rivals = [...unitsFor(dimension), dimensionTable[dimension].si].map((name) => unitNamed(name, dimension))
  let best: string | undefined
  let bestLength = Number.POSITIVE_INFINITY
  for (const unit of [preferred, ...rivals]) {
    const text = exactIn(value, unit)
    const length = (text?.length ?? Number.POSITIVE_INFINITY) + (unit === preferred ? 0 : 3)
    if (text !== undefined && length < bestLength) {
      best = text
      bestLength = length
    }
  }
  if (best === undefined) throw new RangeError(`${dimension} ${value} has no exact text`)
  return best
}

function exactIn(value: number, unit: Unit): string | undefined {
  const inUnit = fromSi(value, unit)
  for (let digits = 1; digits <= 17; digits++) {
    const rounded = Number(inUnit.toPrecision(digits))
    if (Object.is(toSi(rounded, unit) + 0, value + 0)) return withUnit(plainText(rounded), unit)
  }
  return undefined
}
