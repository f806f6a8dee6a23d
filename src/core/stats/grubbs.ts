import { deviationsOf } from './deviations.ts'
import { studentTQuantile } from './studentT.ts'

/** How far the outermost values lie from the mean, in standard deviations of all. */
export interface Grubbs {
  readonly high: number
  /** From zero up. */
  readonly low: number
  /** Index of the largest and of the smallest value. */
  readonly highest: number
  readonly lowest: number
}

/** Grubbs' statistics for one outlying value (Grubbs 1950; ISO 5725-2:2019, 8.3.5). Zeros where all values are equal. */
export function grubbs(values: readonly number[]): Grubbs {
  if (!(values.length >= 3)) throw new RangeError(`Grubbs' test needs three or more values, got ${values.length}`)
  const { deviations } = deviationsOf(values)
  const list = [...deviations]
  const deviation = Math.sqrt(list.reduce((sum, d) => sum + d * d, 0) / (list.length - 1))
  const highest = list.indexOf(Math.max(...list))
  const lowest = list.indexOf(Math.min(...list))
  const share = (d: number): number => (deviation > 0 ? d / deviation : 0)
  return { high: share(list[highest]), low: share(-list[lowest]), highest, lowest }
}

/**
 * Value that the larger of the two statistics exceeds with probability `significance` at most in normal data: the table of ISO
 * 5725-2. With `sides` 1 the same for one side that was chosen before the data were seen.
 */
export function grubbsCritical(count: number, significance: number, sides: 1 | 2 = 2): number {
  if (!(Number.isInteger(count) && count >= 3))
    throw new RangeError(`count must be a whole number from 3, got ${count}`)
  const t = studentTQuantile(1 - significance / sides / count, count - 2)
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(1 / ((count - 2) / (t * t) + 1))
}
