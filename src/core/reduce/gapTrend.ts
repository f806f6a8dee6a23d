import { correlatedFit, correlationLikelihood } from './estimate/correlatedFit.ts'
import { laggedProducts } from './estimate/laggedProducts.ts'
import { noiseCorrelation } from './estimate/noiseCorrelation.ts'
import type { SignalSource, Signals } from './signals.ts'

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
const fewestRows = 8

/** Straight line and once-per-turn run-out of the gap over rows `from` to `to`. */
export function gapTrend(source: SignalSource, from: number, to: number): GapTrend | undefined {
  if (!source.hasGap) return undefined
  const { time, angle, gap } = someRows(source, from, to)
  const last = gap.length - 1
  if (gap.length < fewestRows) return undefined
  const span = time[last] - time[0]
  const turns = Math.abs(angle[last] - angle[0]) / (2 * Math.PI)
  const mean = gap.reduce((a, b) => a + b, 0) / gap.length
  const [ones, cosine] = [new Float64Array(gap.length).fill(1), angle.map(Math.cos)]
  const begin = time[0]
  for (let i = 0; i < gap.length; i++) {
    time[i] = (time[i] - begin) / span - 0.5
    angle[i] = Math.sin(angle[i])
    gap[i] = (gap[i] - mean) * 1e6
  }
  const products = laggedProducts(turns >= 1 ? [ones, time, cosine, angle, gap] : [ones, time, gap])
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

/** Every so many rows, those without a gap left out. */
function someRows(
  source: SignalSource,
  from: number,
  to: number,
): Pick<Signals, 'time' | 'angle'> & { gap: Float64Array } {
  const stride = Math.max(1, Math.ceil((to - from) / mostRows))
  const rows = Math.ceil(Math.max(0, to - from) / stride)
  const [time, angle, gap] = [new Float64Array(rows), new Float64Array(rows), new Float64Array(rows)]
  let next = from
  let count = 0
  for (const page of source.pages(from, to)) {
    for (; next < page.from + page.rows; next += stride) {
      const i = next - page.from
      gap[count] = page.gap?.[i] ?? Number.NaN
      if (Number.isNaN(gap[count])) continue
      time[count] = page.time[i]
      angle[count++] = page.angle[i]
    }
  }
  return { time: time.subarray(0, count), angle: angle.subarray(0, count), gap: gap.subarray(0, count) }
}
