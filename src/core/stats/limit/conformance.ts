import { studentTCdf } from '../studentT.ts'
import type { Tolerance } from './tolerance.ts'

/** A value with its standard uncertainty; degrees of freedom are infinite where left out. */
export interface Assessed {
  readonly value: number
  readonly standardUncertainty: number
  readonly degreesOfFreedom?: number
}

/**
 * Probability that the true value keeps to a limit (JCGM 106:2012, 7.4 and 7.5), by the normal distribution about the value, or
 * by t where the uncertainty has few degrees of freedom. With no uncertainty it is 0 or 1.
 */
export function conformanceProbability(assessed: Assessed, { lower, upper }: Tolerance): number {
  const { value, standardUncertainty: u, degreesOfFreedom = Number.POSITIVE_INFINITY } = assessed
  if (!(u >= 0)) throw new RangeError(`standard uncertainty must be zero or more, got ${u}`)
  const below = (end: number | null, open: number): number => {
    if (end === null) return open
    if (u === 0) return value <= end ? 1 : 0
    return studentTCdf((end - value) / u, degreesOfFreedom)
  }
  // A value right at the lower end keeps to it.
  const under = u === 0 && lower !== null && value === lower ? 0 : below(lower, 0)
  return Math.max(0, below(upper, 1) - under)
}
