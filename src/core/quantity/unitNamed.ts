import type { Dimension } from './dimension.ts'
import { type Unit, unitsOf } from './unitsOf.ts'

/** The one reading of a unit that we name ourselves. Throws RangeError when the text has no reading in the dimension. */
export function unitNamed(text: string, dimension: Dimension): Unit {
  const unit = unitsOf(text).find((reading) => reading.dimension === dimension)
  if (unit === undefined) throw new RangeError(`${text} is no unit of ${dimension}`)
  return unit
}
