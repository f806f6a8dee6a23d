import { printQuantity } from '../../quantity/index.ts'
import type { Bounded, RunInVerdict } from '../../terms/index.ts'
import { type CorrelatedProfile, correlatedProfile } from '../profile/correlatedProfile.ts'
import { plainCombination } from '../profile/plainCombination.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

/** Friction over the last third of the distance: its mean and its change from there to the end, both with 95 % intervals. */
export interface LateThird {
  readonly mean: Bounded
  readonly change: Bounded
  readonly from: number
  readonly to: number
}

/** Straight line through the last third, with noise that remembers. Undefined where it holds too few blocks. */
export function lateThird(blocks: SlidingBlocks): LateThird | undefined {
  const count = blocks.friction.length
  const begin = count - Math.max(Math.floor(count / 3), Math.min(count, 8))
  const from = blocks.distance[begin]
  const to = blocks.distance[count - 1]
  const middle = (from + to) / 2
  const line = straightLine(blocks.friction.subarray(begin), {
    along: blocks.distance.subarray(begin).map((s) => (s - middle) / (to - from)),
    turn: blocks.turn.map((column) => column.subarray(begin)),
  })
  return line && { mean: line.level, change: line.slope, from, to }
}

/**
 * By how much friction over the first third of the distance stood over that of the last, as a share of the latter: what a
 * running-in hump leaves whatever its shape.
 */
export function earlyExcess({ friction, distance }: SlidingBlocks, noise: CorrelatedProfile): Bounded {
  const [begin, end] = [distance[0], distance[distance.length - 1]]
  const thirdOf = (s: number): number => Math.min(2, Math.floor((3 * (s - begin)) / (end - begin)))
  const counts = [0, 0, 0]
  for (const s of distance) counts[thirdOf(s)]++
  const weights = distance.map((s) => [1 / counts[0], 0, -1 / counts[2]][thirdOf(s)])
  const late = friction.reduce((sum, value, i) => sum + Math.max(0, -weights[i]) * value, 0)
  return divided(plainCombination(friction, weights, noise), Math.abs(late))
}

/** Change of a channel per metre slid; undefined where it stands still to the last digit, as one does that nobody read. */
export function trendOf(values: Float64Array, { distance, turn }: SlidingBlocks): Bounded | undefined {
  if (values.every((value) => value === values[0])) return undefined
  const whole = distance[distance.length - 1] - distance[0]
  const line = straightLine(values, { along: distance.map((s) => (s - distance[0]) / whole), turn })
  return line && divided(line.slope, whole)
}

function straightLine(
  response: Float64Array,
  { along, turn }: { readonly along: Float64Array; readonly turn: readonly Float64Array[] },
): { level: Bounded; slope: Bounded } | undefined {
  const ones = new Float64Array(response.length).fill(1)
  const fitWith = (extra: readonly Float64Array[]) =>
    correlatedProfile({ response, columns: () => [ones, along, ...extra], places: [[]] })
  const fit = fitWith(turn) ?? fitWith([])
  if (fit === undefined) return undefined
  const size = fit.profile.best.coefficients.length
  const slope = Array.from({ length: size }, (_, i) => (i === 1 ? 1 : 0))
  const evenly = new Float64Array(response.length).fill(1 / response.length)
  const { coefficients } = fit.profile.best
  // A third holds no whole number of turns: what comes back with them is taken off before the mean.
  const still = response.map((value, i) =>
    fit.columns.slice(2).reduce((left, column, k) => left - coefficients[2 + k] * column[i], value),
  )
  return { level: plainCombination(still, evenly, fit), slope: fit.profile.combination(() => slope) }
}

/**
 * Is it run in? Yes where the interval of the change over the last third lies inside ± the margin, no where it lies outside,
 * otherwise the record cannot tell: an equivalence rule, two one-sided tests at 2.5 % each (Schuirmann 1987, from memory).
 */
export function runInVerdict({ mean, change, from, to }: LateThird, margin: number): RunInVerdict {
  if (!(margin > 0)) throw new RangeError(`margin must be above zero, got ${margin}`)
  const relative = divided(change, Math.abs(mean.value))
  const low = relative.low ?? Number.NEGATIVE_INFINITY
  const high = relative.high ?? Number.POSITIVE_INFINITY
  const verdict = low > -margin && high < margin ? 'runIn' : low > margin || high < -margin ? 'notRunIn' : 'cannotTell'
  return { verdict, change: relative, margin, from, to, sentence: sentenceOf(verdict, relative, margin) }
}

function sentenceOf(verdict: RunInVerdict['verdict'], change: Bounded, margin: number): string {
  const share = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value, 'ratio', { digits: 2, unit: '%' })
  const seen = `Over the last third of the distance friction changed by ${share(change.value)} (95 % from ${share(change.low)} to ${share(change.high)})`
  const limit = `±${share(margin)}`
  switch (verdict) {
    case 'runIn':
      return `Run in: ${lower(seen)}, inside ${limit}.`
    case 'notRunIn':
      return `Not run in: ${lower(seen)}, outside ${limit}.`
    case 'cannotTell':
      return `Cannot tell: ${lower(seen)}, and the interval crosses ${limit}.`
  }
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

const divided = ({ value, low, high }: Bounded, by: number): Bounded => ({
  value: value / by,
  low: low === null ? null : low / by,
  high: high === null ? null : high / by,
})
