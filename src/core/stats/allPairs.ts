import { studentizedRangeCdf, studentizedRangeQuantile } from './studentizedRange.ts'

/** A difference of two means with its standard error. */
export interface PairDifference {
  readonly value: number
  readonly standardError: number
  readonly degreesOfFreedom: number
}

/** The same for all pairs at once. */
export interface JudgedPair extends PairDifference {
  readonly low: number
  readonly high: number
  /** Adjusted for all pairs. */
  readonly p: number
}

/**
 * Tukey and Kramer's comparison of all pairs of `groups` means at 95 %: exact for equal numbers in each group, on the safe side
 * otherwise (Hayter 1984, Ann. Statist. 12:61); with degrees of freedom of Satterthwaite an approximation.
 */
export function tukeyKramer(pair: PairDifference, groups: number): JudgedPair {
  const { value, standardError, degreesOfFreedom } = pair
  const setting = { groups, degreesOfFreedom }
  const half = (studentizedRangeQuantile(0.95, setting) / Math.SQRT2) * standardError
  const q = value === 0 ? 0 : (Math.abs(value) / standardError) * Math.SQRT2
  return { ...pair, low: value - half, high: value + half, p: Math.max(0, 1 - studentizedRangeCdf(q, setting)) }
}
