import { studentTQuantile } from '../../stats/index.ts'
import type { Interval, Second } from '../../terms/index.ts'
import type { SlipCycles } from './slipCycles.ts'

/** What the cycles of one step come to. */
export interface VibrationNumbers {
  readonly cycles: number
  /** Hz */
  readonly frequency: Interval
  /** Peak to trough in units of friction. */
  readonly amplitude: Interval
  /** Share of a cycle in which the contact sticks. */
  readonly stickShare: Interval
  /** Friction per second while the spring is loaded. */
  readonly loading: Interval
  /** Share of a cycle spent falling, from turning point to turning point. */
  readonly falling: number
  /** Standard deviation of the periods over their mean. */
  readonly irregularity: number
}

/**
 * Means over the cycles with 95 % intervals, Student's t on the cycles. What counts as independent is the drop of each fall:
 * periods are not, as a deep fall lengthens the rise after it. Between falls the spring gains what they shed, so the scatter of the
 * drops over the slope is that of the periods; the timing of single falls, good to a sample, cancels but for the first and the last.
 */
export function vibrationNumbers(cycles: SlipCycles, sampleInterval: Second): VibrationNumbers | undefined {
  const { periods, drops, falls, slope } = cycles
  const count = periods.length
  if (count < 2 || !(slope > 0)) return undefined
  const t = studentTQuantile(0.975, count - 1)
  const period = mean(periods)
  const reading = (2 * cycles.noise) / mean(cycles.rises.map(({ rows }) => rows))
  const scatter = accumulated(drops, reading)
  const timing = Math.sqrt(sampleInterval ** 2 / 6) / count
  const periodU = Math.hypot(scatter / slope, timing)
  const slip = slipTime(falls, { sampleInterval, push: slope / (mean(drops) / 2) })
  const loaded = slope * slip.time
  const dropU = Math.hypot(scatter, period * cycles.slopeUncertainty, slope * slip.uncertainty)
  const share = 1 - slip.time / period
  const shareU = Math.hypot(slip.uncertainty, (slip.time * periodU) / period) / period
  const amplitude = mean(drops) - loaded
  return {
    cycles: count,
    frequency: { value: 1 / period, low: 1 / (period + t * periodU), high: 1 / Math.max(1e-9, period - t * periodU) },
    amplitude: around(amplitude, t * dropU),
    stickShare: { value: share, low: Math.max(0, share - t * shareU), high: Math.min(1, share + t * shareU) },
    loading: around(cycles.slope, t * cycles.slopeUncertainty),
    falling: mean(falls) / (mean(falls) + mean(cycles.rises.map(({ trough, peak }) => peak - trough))),
    irregularity: Math.sqrt(variance(periods)) / period,
  }
}

const around = (value: number, half: number): Interval => ({ value, low: value - half, high: value + half })

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length

function variance(values: readonly number[]): number {
  const middle = mean(values)
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1)
}

/**
 * Standard uncertainty of the mean of steps between marks that are each read with an error: of the variance seen, `reading` comes from
 * the two marks and cancels but for the first and the last mark.
 */
function accumulated(steps: readonly number[], reading: number): number {
  const own = Math.max(0, variance(steps) - reading)
  return Math.sqrt(own / steps.length + reading / steps.length ** 2)
}

/**
 * Time of a slip. A fall that is over within a sample or two looks longer by one, as no sample lies on its ends; one that is resolved looks as long
 * as half a swing, and the mass slips a little longer than that since the drive goes on (`push`: loading per second over half the drop).
 */
function slipTime(
  falls: readonly number[],
  { sampleInterval, push }: { sampleInterval: Second; push: number },
): { time: Second; uncertainty: Second } {
  const rows = mean(falls)
  const scatter = falls.length > 1 ? Math.sqrt(variance(falls) / falls.length) * sampleInterval : sampleInterval
  const unseen = rows > 2 ? 1 / (rows - 1) : 1
  const half = Math.max(0, rows - unseen) * sampleInterval
  const time = half * (1 + (2 / Math.PI) * Math.atan((push * half) / Math.PI))
  return { time, uncertainty: Math.hypot(scatter, sampleInterval / Math.sqrt(12)) }
}
