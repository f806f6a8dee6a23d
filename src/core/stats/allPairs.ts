import { studentizedRangeCdf, studentizedRangeQuantile } from './studentizedRange.ts'
import { studentTCdf, studentTQuantile } from './studentT.ts'

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
export function tukeyKramer(pairs: readonly PairDifference[], groups: number): JudgedPair[] {
  // Most pairs have one number of degrees of freedom, and a quantile takes long.
  const factors = new Map<string, number>()
  const factorOf = (degreesOfFreedom: number): number => {
    const key = degreesOfFreedom.toPrecision(9)
    const factor = factors.get(key) ?? quantileOf({ groups, degreesOfFreedom })
    factors.set(key, factor)
    return factor
  }
  return pairs.map((pair) => {
    const half = factorOf(pair.degreesOfFreedom) * pair.standardError
    const t = pair.value === 0 ? 0 : Math.abs(pair.value) / pair.standardError
    return { ...pair, low: pair.value - half, high: pair.value + half, p: chanceOf(t, { ...pair, groups }) }
  })
}

type Setting = { readonly groups: number; readonly degreesOfFreedom: number }

/** In units of the standard error of a difference. One pair is Student's test, which is quicker to have. */
const quantileOf = ({ groups, degreesOfFreedom }: Setting): number =>
  groups === 2
    ? studentTQuantile(0.975, degreesOfFreedom)
    : studentizedRangeQuantile(0.95, { groups, degreesOfFreedom }) / Math.SQRT2

const chanceOf = (t: number, { groups, degreesOfFreedom }: Setting): number =>
  groups === 2
    ? 2 * studentTCdf(-t, degreesOfFreedom)
    : Math.max(0, 1 - studentizedRangeCdf(t * Math.SQRT2, { groups, degreesOfFreedom }))
