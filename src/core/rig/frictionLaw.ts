import type { CurveModelName, MetrePerSecond, Ratio } from '../terms/index.ts'

/**
 * Friction against sliding speed, as it truly is in a simulated record. `at` must give a number of zero or more for any
 * speed above zero. Model and parameters are what the truth file prints; `at` alone is computed with.
 */
export interface FrictionLaw {
  readonly model: CurveModelName | 'other'
  readonly parameters: Readonly<Record<string, number>>
  readonly at: (speed: MetrePerSecond) => Ratio
}
