import { printQuantity } from '../../quantity/index.ts'
import { mannKendall, theilSen } from '../../stats/index.ts'
import type { Ratio, Remark } from '../../terms/index.ts'

/** Fewest block means that a trend is looked for in. */
const fewestBlocks = 8

/** Most block means: the test takes every pair. */
const mostBlocks = 60

/** A drift over the step under this share of friction is left unsaid. Common practice, no source. */
const smallestDrift = 0.02

/** What a trend is looked for in. */
export interface SteadySeen {
  /** Residual of the step's fit, in friction units. */
  readonly residual: Float64Array
  readonly friction: number
  /** Integrated autocorrelation time in rows; blocks are at least twice as long. */
  readonly autocorrelationTime: number
  readonly step: number
}

/** A trend left after the cut: Mann–Kendall on block means, its size by Theil and Sen. */
export function notSteady(seen: SteadySeen, significance: Ratio): Remark | undefined {
  const length = Math.max(Math.ceil(2 * seen.autocorrelationTime), Math.ceil(seen.residual.length / mostBlocks), 1)
  const blocks = Math.floor(seen.residual.length / length)
  if (blocks < fewestBlocks) return undefined
  const means = Float64Array.from({ length: blocks }, (_, b) => mean(seen.residual, b * length, (b + 1) * length))
  const trend = mannKendall(means)
  if (!(trend.p < significance)) return undefined
  const at = means.map((_, i) => i)
  const drift = (theilSen(at, means).slope * blocks) / seen.friction
  if (!(Math.abs(drift) > smallestDrift)) return undefined
  return {
    kind: 'notSteady',
    seen: drift,
    limit: smallestDrift,
    unit: '',
    step: seen.step,
    sentence: `Friction still ${drift > 0 ? 'rose' : 'fell'} by ${printQuantity(Math.abs(drift), 'ratio', { digits: 2 })} over the rows kept.`,
    next: 'Condition longer, or lengthen the step.',
  }
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0
  for (let i = from; i < to; i++) sum += values[i]
  return sum / (to - from)
}
