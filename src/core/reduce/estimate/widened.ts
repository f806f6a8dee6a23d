import type { StepResult } from './stepResult.ts'

/** The step with the variance of its noise part times `factor`; the ripple part stays. */
export function widened(step: StepResult, factor: number): StepResult {
  if (step.estimate === undefined || factor === 1) return step
  const { uncertainty, rippleShare } = step.estimate
  const by = Math.sqrt(factor * (1 - rippleShare) + rippleShare)
  return {
    ...step,
    correlationTime: step.correlationTime * factor,
    estimate: { ...step.estimate, uncertainty: uncertainty * by },
  }
}
