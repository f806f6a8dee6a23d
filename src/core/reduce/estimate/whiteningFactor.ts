import { residualOf } from './residualOf.ts'
import type { StepResult } from './stepResult.ts'

/** Highest order tried for what is left after the first lag. */
const highestOrder = 12

/** Fewest rows before correlation beyond the first lag is looked for. */
const fewestRows = 100

/**
 * How much longer the noise remembers than one lag says: long-run variance of the innovations over their variance, from
 * an autoregression whose order AICc chooses, pooled over the steps (prewhitened long-run variance, Andrews & Monahan
 * 1992, with an autoregressive second stage). 1 where one lag describes the noise; it never narrows an interval.
 */
export function whiteningFactor(steps: readonly StepResult[], orders: readonly number[]): number {
  const used = steps.filter((step) => step.estimate !== undefined)
  const { correlations, rows } = pooledCorrelations(used.map((step) => innovationsOf(step, orders)))
  if (rows < fewestRows) return 1
  let factor = 1
  // The fitted level of each step took its share of every covariance; how large it was depends on the factor itself.
  for (let round = 0; round < 2; round++) {
    const taken = (factor * used.length) / rows
    factor = longRunFactor(
      correlations.map((r) => (r + taken) / (1 + taken)),
      rows,
    )
  }
  return Math.max(1, factor)
}

function pooledCorrelations(series: readonly Float64Array[]): { correlations: number[]; rows: number } {
  const products = new Array<number>(highestOrder + 1).fill(0)
  let rows = 0
  for (const innovations of series) {
    const variance = innovations.reduce((sum, value) => sum + value * value, 0) / innovations.length
    if (!(variance > 0)) continue
    rows += innovations.length
    for (let lag = 0; lag <= highestOrder; lag++) {
      let sum = 0
      for (let i = lag; i < innovations.length; i++) sum += innovations[i] * innovations[i - lag]
      products[lag] += sum / variance
    }
  }
  return { correlations: products.map((product) => product / rows), rows }
}

/** σ²/(1 − Σφ)² over the variance, by Levinson and Durbin's recursion, at the order of the least AICc. */
function longRunFactor(correlations: readonly number[], rows: number): number {
  let coefficients: number[] = []
  let variance = 1
  let best = { score: 0, factor: 1 }
  for (let order = 1; order <= highestOrder; order++) {
    const predicted = coefficients.reduce((sum, c, i) => sum + c * correlations[order - 1 - i], 0)
    const reflection = (correlations[order] - predicted) / variance
    coefficients = [...coefficients.map((c, i) => c - reflection * coefficients[order - 2 - i]), reflection]
    variance *= 1 - reflection * reflection
    if (!(variance > 0)) break
    const score = rows * Math.log(variance) + 2 * order + (2 * order * (order + 1)) / (rows - order - 1)
    const gain = 1 - coefficients.reduce((sum, c) => sum + c, 0)
    if (score < best.score) best = { score, factor: variance / (gain * gain) }
  }
  return best.factor
}

/** Residual of the step's fit less ρ times the one before. */
function innovationsOf(step: StepResult, orders: readonly number[]): Float64Array {
  const correlation = step.noise?.correlation ?? 0
  const residual = residualOf(step, orders)
  const out = new Float64Array(Math.max(0, residual.length - 1))
  for (let i = 0; i < out.length; i++) out[i] = residual[i + 1] - correlation * residual[i]
  return out
}
