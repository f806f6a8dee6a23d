import { betaLogOdds, incompleteBeta } from './incompleteBeta.ts'
import { probabilityChecked } from './probabilityChecked.ts'

/** Degrees of freedom of numerator and denominator, above zero, not necessarily whole. */
export type FisherFreedom = readonly [numerator: number, denominator: number]

/** Probability that Fisher's F is at most f. */
export function fisherFCdf(f: number, freedom: FisherFreedom): number {
  const { x, y } = shares(f, freedom)
  return incompleteBeta({ x, y, a: freedom[0] / 2, b: freedom[1] / 2 })
}

/** Probability that Fisher's F is above f, with full precision where small. */
export function fisherFUpper(f: number, freedom: FisherFreedom): number {
  const { x, y } = shares(f, freedom)
  return incompleteBeta({ x: y, y: x, a: freedom[1] / 2, b: freedom[0] / 2 })
}

/** Quantile of Fisher's F. */
export function fisherFQuantile(probability: number, [numerator, denominator]: FisherFreedom): number {
  probabilityChecked(probability)
  const a = numerator / 2
  const b = denominator / 2
  if (!(a > 0 && b > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${numerator}, ${denominator}`)
  if (probability === 0) return 0
  if (probability === 1) return Number.POSITIVE_INFINITY
  const logOdds =
    probability <= 0.5 ? betaLogOdds(probability, { a, b }) : -betaLogOdds(1 - probability, { a: b, b: a })
  return (denominator / numerator) * Math.exp(logOdds)
}

function shares(f: number, [numerator, denominator]: FisherFreedom): { x: number; y: number } {
  if (!(f >= 0)) throw new RangeError(`F must be zero or more, got ${f}`)
  const odds = (numerator / denominator) * f
  const y = 1 / (1 + odds)
  return { x: odds === Number.POSITIVE_INFINITY ? 1 : odds * y, y }
}
