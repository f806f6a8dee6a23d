import { integrate } from '../numeric/index.ts'
import { logGamma, normalCdf, studentTQuantile } from '../stats/index.ts'
import type { Ratio } from '../terms/index.ts'

/** Two one-sided tests of a difference against margins. All in one unit. */
export interface EquivalenceTest {
  readonly lowMargin: number
  readonly highMargin: number
  /** True difference. */
  readonly difference: number
  /** True standard deviation of the estimated difference. */
  readonly standardError: number
  readonly degreesOfFreedom: number
  /** Of each of the two tests. */
  readonly significance: Ratio
}

/**
 * Power of the two one-sided tests, exact: both must reject at once, so the difference must fall between the margins less t·s, for
 * every s that chance may bring (Schuirmann 1987; Owen 1965; from memory). Absolute error about 1e-9.
 */
export function equivalencePower(test: EquivalenceTest): Ratio {
  const { lowMargin, highMargin, difference, standardError, degreesOfFreedom: nu, significance } = test
  if (!(highMargin > lowMargin)) throw new RangeError(`margins must rise, got ${lowMargin} and ${highMargin}`)
  if (!(standardError > 0)) throw new RangeError(`standard error must be more than zero, got ${standardError}`)
  if (!(nu > 0)) throw new RangeError(`degrees of freedom must be more than zero, got ${nu}`)
  if (!(significance > 0 && significance < 0.5))
    throw new RangeError(`significance must lie between 0 and 0.5, got ${significance}`)
  const critical = studentTQuantile(1 - significance, nu)
  const low = (lowMargin - difference) / standardError
  const high = (highMargin - difference) / standardError
  // s over σ beyond which the two rejections exclude each other.
  const widest = (high - low) / (2 * critical)
  const constant = Math.LN2 + (nu / 2) * Math.log(nu / 2) - logGamma(nu / 2)
  const density = (s: number): number => (s <= 0 ? 0 : Math.exp(constant + (nu - 1) * Math.log(s) - (nu * s * s) / 2))
  const inside = (s: number): number => normalCdf(high - critical * s) - normalCdf(low + critical * s)
  // Ten standard deviations of s about its mean hold all that counts.
  const end = Math.min(widest, 1 + 10 / Math.sqrt(2 * nu))
  const begin = Math.max(0, 1 - 10 / Math.sqrt(2 * nu))
  if (end <= begin) return 0
  return Math.max(0, integrate((s) => density(s) * Math.max(0, inside(s)), [begin, end], { absolute: 1e-10 }).value)
}

/** What has to be shown as equal. */
export interface EquivalenceQuestion {
  /** Largest difference without meaning, a share of the mean, to either side. */
  readonly margin: Ratio
  readonly repeatability: Ratio
  readonly power: Ratio
  readonly significance: Ratio
  /** True difference that may be there all the same; none if not given. */
  readonly difference?: Ratio
}

/** Replicates per sample that show two equal samples to be equal within the margin. Throws RangeError where more than 10,000 would not do. */
export function replicatesForEquivalence(question: EquivalenceQuestion): {
  readonly replicates: number
  readonly power: Ratio
} {
  const { margin, repeatability, significance, difference = 0 } = question
  if (!(margin > Math.abs(difference)))
    throw new RangeError(`margin must be more than the true difference, got ${margin}`)
  if (!(repeatability > 0)) throw new RangeError(`repeatability must be more than zero, got ${repeatability}`)
  const powerOf = (n: number): Ratio =>
    equivalencePower({
      lowMargin: -margin,
      highMargin: margin,
      difference,
      standardError: repeatability * Math.sqrt(2 / n),
      degreesOfFreedom: 2 * n - 2,
      significance,
    })
  let high = 2
  while (powerOf(high) < question.power) {
    high *= 2
    if (high > 16_384) throw new RangeError(`margin must be wide enough to be shown, got ${margin}`)
  }
  let low = high / 2
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (middle >= 2 && powerOf(middle) >= question.power) high = middle
    else low = middle
  }
  return { replicates: high, power: powerOf(high) }
}
