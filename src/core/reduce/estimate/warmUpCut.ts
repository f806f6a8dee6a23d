import { mser5 } from '../../stats/index.ts'

/** A cut counts as a warm-up when some head of it differs from the rest by this many standard uncertainties. */
const clearDifference = 4.5

/**
 * Rows to leave out at the head of a step because friction had not settled: MSER-5 (White 1997) on friction with the
 * turn ripple taken off. Where nothing that MSER takes off differs from the rest the cut is not made: on a stationary
 * stretch MSER cuts at random, which wastes rows and makes the rest look quieter than it is. Where the whole record holds too few
 * independent rows to tell drift from correlation, MSER's cut stands.
 *
 * @param friction one value a row, ripple taken off
 * @param inflation n·var(mean)/σ² of n rows of its noise
 * @param independentRows of the whole record: rows over inflation, summed over the steps
 */
export function warmUpCut(
  friction: Float64Array,
  inflation: (rows: number) => number,
  independentRows: number,
): number {
  const { cut } = mser5(friction)
  if (cut === 0 || independentRows < fewestIndependent) return cut
  const rest = moments(friction, cut, friction.length)
  const variance = (rows: number): number => (rest.variance * inflation(rows)) / rows
  const restVariance = variance(friction.length - cut)
  for (let head = Math.min(batch, cut); head <= cut; head *= 2) {
    const difference = Math.abs(moments(friction, 0, head).mean - rest.mean)
    if (difference > clearDifference * Math.sqrt(restVariance + variance(head))) return cut
  }
  return 0
}

const batch = 5

/** Independent rows in a record below which drift and correlation cannot be told apart. */
const fewestIndependent = 40

function moments(values: Float64Array, from: number, to: number): { mean: number; variance: number } {
  let mean = 0
  for (let i = from; i < to; i++) mean += values[i]
  mean /= to - from
  let squares = 0
  for (let i = from; i < to; i++) squares += (values[i] - mean) ** 2
  return { mean, variance: squares / Math.max(1, to - from - 1) }
}
