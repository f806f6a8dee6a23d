import type { Observations } from './curvePoint.ts'
import { spreadOf, weightedSquares } from './studentLoss.ts'

/**
 * Scatter between steps beyond their own uncertainty: the standard deviation (a share of friction) that brings the weighted
 * sum of squares down to what is `expected` of it; zero where it is there already. The moment estimator of Mandel & Paule
 * 1970 (Anal. Chem. 42:1194, from memory) for residuals of a curve and own uncertainties with few degrees of freedom.
 */
export function extraScatter(observations: Observations, residuals: Float64Array, expected: number): number {
  const excess = (scatter: number): number => weightedSquares(spreadOf(observations, scatter), residuals) - expected
  if (!(excess(0) > 0)) return 0
  let low = 0
  let high = 0
  for (const r of residuals) high = Math.max(high, Math.abs(r))
  high *= Math.sqrt(residuals.length)
  while (excess(high) > 0) high *= 4
  for (let round = 0; round < 60 && high - low > 1e-6 * high; round++) {
    const middle = (low + high) / 2
    if (excess(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
