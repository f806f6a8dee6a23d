import { meanInflation } from './meanInflation.ts'
import { type NoiseShape, noiseShape } from './noiseShape.ts'
import { residualOf } from './residualOf.ts'
import type { StepResult } from './stepResult.ts'
import { widened } from './widened.ts'

/** Shape of the noise of a record's steps, learned from their residuals together. */
export const recordShape = (steps: readonly StepResult[], orders: readonly number[]): NoiseShape | undefined =>
  noiseShape(steps.flatMap((step) => (step.estimate === undefined ? [] : [residualOf(step, orders)])))

/** The step with the noise part of its variance set right for noise that one lag does not describe. */
export function shaped(step: StepResult, shape: NoiseShape): StepResult {
  if (step.products === undefined || step.estimate === undefined) return step
  const { rows } = step.products
  const correlation = step.noise?.correlation ?? 0
  const { mean, logVariance } = shape.inflation(rows)
  // The innovations were taken at the step's ρ; of noise of this shape their variance is this share of the noise's.
  const innovations = 1 + correlation * (correlation - 2 * shape.lagOne)
  const assumed = meanInflation(correlation, rows) / (1 - correlation * correlation)
  const wide = widened(step, mean / innovations / assumed)
  const { degreesOfFreedom } = step.estimate
  const known = Math.max(1, 2 / (2 / degreesOfFreedom + logVariance))
  return wide.estimate === undefined ? wide : { ...wide, estimate: { ...wide.estimate, degreesOfFreedom: known } }
}
