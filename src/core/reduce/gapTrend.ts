import { correlatedFit, correlationLikelihood } from './estimate/correlatedFit.ts'
import { laggedProducts } from './estimate/laggedProducts.ts'
import { noiseCorrelation } from './estimate/noiseCorrelation.ts'
import type { StepResult } from './estimate/stepResult.ts'
import type { StepRows } from './estimate/stepRows.ts'

/** How the gap moved over the kept rows of a step, m. */
export interface GapTrend {
  /** Change of the gap over the step, m. */
  readonly creep: number
  readonly uncertainty: number
  /** Amplitude once a turn, m; NaN where the step holds less than a turn. */
  readonly runOut: number
  readonly mean: number
}

const fewestRows = 8

/** Straight line and once-per-turn run-out of the gap over the kept rows of a step; undefined without a gap. */
export function gapTrend({ rows, from }: Pick<StepResult, 'rows' | 'from'>): GapTrend | undefined {
  const { time, angle, gap } = withGap(rows, from)
  const last = gap.length - 1
  if (gap.length < fewestRows) return undefined
  const span = time[last] - time[0]
  const turns = Math.abs(angle[last] - angle[0]) / (2 * Math.PI)
  const mean = gap.reduce((a, b) => a + b, 0) / gap.length
  const columns = [new Float64Array(gap.length).fill(1), time.map((t) => (t - time[0]) / span - 0.5)]
  if (turns >= 1) columns.push(angle.map(Math.cos), angle.map(Math.sin))
  const products = laggedProducts([...columns, gap.map((value) => (value - mean) * 1e6)])
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

/** Kept rows that have a gap. */
function withGap({ time, angle, gap }: StepRows, from: number): Pick<StepRows, 'time' | 'angle' | 'gap'> {
  const known = gap.subarray(from)
  if (!known.some(Number.isNaN)) return { time: time.subarray(from), angle: angle.subarray(from), gap: known }
  const has = (_: number, i: number): boolean => !Number.isNaN(known[i])
  return { time: time.subarray(from).filter(has), angle: angle.subarray(from).filter(has), gap: known.filter(has) }
}
