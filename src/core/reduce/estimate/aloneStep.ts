import { integratedAutocorrelationTime } from '../../stats/index.ts'
import { residualOf } from './residualOf.ts'
import type { StepResult } from './stepResult.ts'
import { widened } from './widened.ts'

/**
 * A step that has no others to learn from: its uncertainty rests on the integrated autocorrelation time of its own
 * residual (Sokal's window), u² = s²τ/N, whatever shape the correlation has.
 */
export function aloneStep(step: StepResult, orders: readonly number[]): StepResult {
  if (step.estimate === undefined) return step
  const residual = residualOf(step, orders)
  const { time, standardError } = integratedAutocorrelationTime(residual)
  const variance = residual.reduce((sum, value) => sum + value * value, 0) / residual.length
  const { uncertainty, rippleShare } = step.estimate
  const noise = uncertainty * uncertainty * (1 - rippleShare)
  const wanted = (variance * time) / residual.length
  const wide = noise > 0 ? widened({ ...step, correlationTime: time }, wanted / noise) : step
  const spread = 2 / Math.max(1, residual.length / time - 1) + (standardError / time) ** 2
  return wide.estimate === undefined
    ? wide
    : { ...wide, correlationTime: time, estimate: { ...wide.estimate, degreesOfFreedom: Math.max(1, 2 / spread) } }
}
