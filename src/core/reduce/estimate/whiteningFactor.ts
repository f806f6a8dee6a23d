import { residualOf } from './residualOf.ts'
import type { StepResult } from './stepResult.ts'

const longestLag = 100

/** Fewest rows before correlation beyond the first lag is looked for. */
const fewestRows = 100

/**
 * Integrated autocorrelation time of the innovations, pooled over the steps: 1 where one lag describes the noise, more
 * where slow movement is left (prewhitened long-run variance, Andrews & Monahan 1992; window after Sokal, c = 5).
 * Only a clear excess counts; it never narrows an interval.
 */
export function whiteningFactor(steps: readonly StepResult[], orders: readonly number[]): number {
  const products = new Float64Array(longestLag + 1)
  const counts = new Float64Array(longestLag + 1)
  for (const step of steps) {
    if (step.estimate === undefined) continue
    const innovations = innovationsOf(step, orders)
    const variance = innovations.reduce((sum, value) => sum + value * value, 0) / innovations.length
    if (!(variance > 0)) continue
    const last = Math.min(longestLag, innovations.length >> 2)
    for (let lag = 0; lag <= last; lag++) {
      let sum = 0
      for (let i = lag; i < innovations.length; i++) sum += innovations[i] * innovations[i - lag]
      products[lag] += sum / variance
      counts[lag] += innovations.length
    }
  }
  if (counts[0] < fewestRows) return 1
  let time = 1
  let lag = 0
  while (lag < longestLag && counts[lag + 1] > 0) {
    lag++
    time += (2 * products[lag]) / counts[lag]
    if (lag >= 5 * Math.max(time, 0.2)) break
  }
  const deviation = Math.max(time, 1) * Math.sqrt((2 * (2 * lag + 1)) / counts[0])
  return time > 1 + 2 * deviation ? time : 1
}

/** Residual of the step's fit less ρ times the one before. */
function innovationsOf(step: StepResult, orders: readonly number[]): Float64Array {
  const correlation = step.noise?.correlation ?? 0
  const residual = residualOf(step, orders)
  const out = new Float64Array(Math.max(0, residual.length - 1))
  for (let i = 0; i < out.length; i++) out[i] = residual[i + 1] - correlation * residual[i]
  return out
}
