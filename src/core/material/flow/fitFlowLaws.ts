import { done, failed, type Outcome, type Ratio } from '../../terms/index.ts'
import { type FlowFit, fitFlowLaw } from './fitFlowLaw.ts'
import { flowCurveProblems } from './flowCurveProblems.ts'
import { flowLaws } from './flowLaw.ts'
import type { FlowPoint } from './flowPoint.ts'
import { type FlowLawName, flowLawNames } from './shape.ts'

/** A fit among others on the same curve. */
export interface RankedFlowFit extends FlowFit {
  /** Difference of the criterion to that of the best. */
  readonly delta: number
  /** Akaike weight; those of all fits sum to 1. */
  readonly weight: Ratio
}

/**
 * Fits every law for which the curve has points enough and ranks them by AICc (weights: Burnham & Anderson 2002). Laws
 * that need more points are left out; none at all is a problem.
 */
export function fitFlowLaws(
  points: readonly FlowPoint[],
  names: readonly FlowLawName[] = flowLawNames,
): Outcome<readonly RankedFlowFit[]> {
  const smallest = Math.min(...names.map((name) => flowLaws[name].parameters.length))
  // The criterion needs two points more than a law with its variance has parameters.
  const problems = flowCurveProblems(points, smallest + 3)
  if (problems.length > 0) return failed(...problems)
  const fits = names.flatMap((name) => {
    const fitted = fitFlowLaw(points, name)
    return fitted.ok && Number.isFinite(fitted.value.criterion) ? [fitted.value] : []
  })
  const least = Math.min(...fits.map(({ criterion }) => criterion))
  const shares = fits.map(({ criterion }) => Math.exp((least - criterion) / 2))
  const whole = shares.reduce((sum, share) => sum + share, 0)
  const ranked = fits.map((fit, i) => ({ ...fit, delta: fit.criterion - least, weight: shares[i] / whole }))
  return done(ranked.sort((a, b) => a.delta - b.delta))
}
