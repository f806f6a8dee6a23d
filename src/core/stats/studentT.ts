import { betaLogOdds, incompleteBeta } from './incompleteBeta.ts'
import { normalCdf, normalQuantile } from './normal.ts'
import { probabilityChecked } from './probabilityChecked.ts'

/** Probability that Student's t with ν > 0 degrees of freedom (need not be whole; may be Infinity) is at most t. */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${degreesOfFreedom}`)
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalCdf(t)
  // x and y = 1 − x from the ratio, so that a large t does not overflow its square.
  const ratio = t / Math.sqrt(degreesOfFreedom)
  const x = 1 / (1 + ratio * ratio)
  const y = Number.isFinite(ratio * ratio) ? ratio * ratio * x : 1
  const tail = 0.5 * incompleteBeta({ x, y, a: degreesOfFreedom / 2, b: 0.5 })
  return t > 0 ? 1 - tail : tail
}

/**
 * Quantile of Student's t with ν > 0 degrees of freedom, which need not be whole and may be Infinity. About 14 digits.
 * Start by Hill 1970 (algorithm 396, Comm. ACM 13:619), then Halley steps on the logarithm of the incomplete beta.
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  probabilityChecked(probability)
  if (!(degreesOfFreedom > 0)) throw new RangeError(`degrees of freedom must be above zero, got ${degreesOfFreedom}`)
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalQuantile(probability)
  const central = probability - 0.5
  if (central === 0) return 0
  const both = 2 * Math.min(probability, 1 - probability)
  if (both === 0) return central < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY
  // ln(t²/ν): from the two tails together where they are small, from what lies between where that is.
  const logOdds =
    both <= 0.5
      ? -betaLogOdds(both, { a: degreesOfFreedom / 2, b: 0.5, start: hillStart(both, degreesOfFreedom) })
      : betaLogOdds(2 * Math.abs(central), { a: 0.5, b: degreesOfFreedom / 2 })
  return Math.sign(central) * Math.sqrt(degreesOfFreedom) * Math.exp(logOdds / 2)
}

/** −ln(t²/ν) for both tails together, to about four digits from ν = 1 on; undefined below. */
function hillStart(both: number, degreesOfFreedom: number): number | undefined {
  const n = degreesOfFreedom
  if (n < 1) return undefined
  const a = 1 / (n - 0.5)
  const b = 48 / (a * a)
  let c = (((20700 * a) / b - 98) * a - 16) * a + 96.36
  const d = ((94.5 / (b + c) - 3) / b + 1) * Math.sqrt(a * (Math.PI / 2)) * n
  let y = (d * both) ** (2 / n)
  if (y <= 0.05 + a) {
    const inner = 1 / (((n + 6) / (n * y) - 0.089 * d - 0.822) * (n + 2) * 3)
    return -Math.log(((inner + 0.5 / (n + 4)) * y - 1) * ((n + 1) / (n + 2)) + 1 / y)
  }
  const x = normalQuantile(both / 2)
  y = x * x
  if (n < 5) c += 0.3 * (n - 4.5) * (x + 0.6)
  c = (((0.05 * d * x - 5) * x - 7) * x - 2) * x + b + c
  y = (((((0.4 * y + 6.3) * y + 36) * y + 94.5) / c - y - 3) / b + 1) * x
  return -Math.log(Math.expm1(a * y * y))
}
