import { studentTQuantile } from '../../stats/index.ts'
import type { Bounded } from '../../terms/index.ts'
import type { CorrelatedProfile } from './correlatedProfile.ts'

/**
 * Σ wᵢ yᵢ with a 95 % interval under the noise that a fit has found: standard deviation and correlation ρ from one row to
 * the next. Where noise remembers for long, optimal weights lean on the first and last rows; these say what they say.
 */
export function plainCombination(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  { deviation, noise, effectiveFreedom }: Pick<CorrelatedProfile, 'deviation' | 'noise' | 'effectiveFreedom'>,
): Bounded {
  let value = 0
  let variance = 0
  // Σ over all earlier rows of their weight times ρ to the distance.
  let before = 0
  for (let i = 0; i < values.length; i++) {
    value += weights[i] * values[i]
    variance += weights[i] * (weights[i] + 2 * before)
    before = noise.correlation * (before + weights[i])
  }
  const reach = deviation * Math.sqrt(Math.max(0, variance)) * studentTQuantile(0.975, Math.max(1, effectiveFreedom))
  return { value, low: value - reach, high: value + reach }
}
