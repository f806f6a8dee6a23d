import { correlatedFit, correlationLikelihood } from './estimate/correlatedFit.ts'
import { laggedProducts } from './estimate/laggedProducts.ts'
import { noiseCorrelation } from './estimate/noiseCorrelation.ts'
import type { Signals } from './signals.ts'

/** How the gap moved over the kept rows of a step, m. */
export interface GapTrend {
  /** Change of the gap over the step, m. */
  readonly creep: number
  readonly uncertainty: number
  /** Amplitude once a turn, m; NaN where the step holds less than a turn. */
  readonly runOut: number
  readonly mean: number
}

/** Rows that are enough for a straight line. */
const mostRows = 4_000

/** Straight line and once-per-turn run-out of the gap over the kept rows of a step. */
export function gapTrend(signals: Signals, from: number): GapTrend | undefined {
  if (signals.gap === null) return undefined
  const stride = Math.max(1, Math.floor((signals.gap.length - from) / mostRows))
  const rows: number[] = []
  for (let i = from; i < signals.gap.length; i += stride) if (!Number.isNaN(signals.gap[i])) rows.push(i)
  if (rows.length < 8) return undefined
  const gap = signals.gap
  const time = Float64Array.from(rows, (i) => signals.time[i])
  const span = time[time.length - 1] - time[0]
  const turns = Math.abs(signals.angle[rows[rows.length - 1]] - signals.angle[rows[0]]) / (2 * Math.PI)
  const level = Float64Array.from(rows, (i) => gap[i])
  const mean = level.reduce((a, b) => a + b, 0) / level.length
  const columns = [new Float64Array(rows.length).fill(1), time.map((t) => (t - time[0]) / span - 0.5)]
  if (turns >= 1) {
    columns.push(Float64Array.from(rows, (i) => Math.cos(signals.angle[i])))
    columns.push(Float64Array.from(rows, (i) => Math.sin(signals.angle[i])))
  }
  const products = laggedProducts([...columns, level.map((value) => (value - mean) * 1e6)])
  const noise = noiseCorrelation([correlationLikelihood(products)])
  const fit = correlatedFit(products, noise.steps[0].correlation)
  if (fit === undefined || !(span > 0))
    return { creep: 0, uncertainty: Number.POSITIVE_INFINITY, runOut: Number.NaN, mean }
  const size = fit.coefficients.length
  return {
    creep: fit.coefficients[1] * 1e-6,
    uncertainty: Math.sqrt(fit.covariance[size + 1]) * 1e-6,
    runOut: turns >= 1 ? Math.hypot(fit.coefficients[2], fit.coefficients[3]) * 1e-6 : Number.NaN,
    mean,
  }
}
