import { printQuantity } from '../../quantity/index.ts'
import type { Bounded, HoldLife } from '../../terms/index.ts'
import { type FittedLaw, fitHoldLaw, ownWeights } from './holdLaws.ts'
import { rampAt } from './rampMean.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

/**
 * In fine blocks noise that is white and noise that remembers mix, and one correlation describes them only roughly: the plain
 * intervals held the truth in 88 of a hundred virtual coatings. Found by simulation ("kufe coverage --of hold").
 */
const roughNoise = 1.7

/** So many blocks in a row have to lie over the threshold before friction counts as having passed it for good. */
const sustained = 4

/**
 * Life to a friction threshold. Where friction passed it for good, a level, a rise and another level are fitted, and the
 * interval holds every distance at which that curve may cross the threshold; else the life is longer than what was slid.
 */
export function lifeOf(
  blocks: SlidingBlocks,
  threshold: number,
  closer: (from: number, to: number) => SlidingBlocks | undefined,
): { life: HoldLife; onset: number | null } {
  const { distance, friction } = blocks
  const watched = distance[distance.length - 1]
  const passed = passing(friction, threshold)
  const near = passed === undefined ? undefined : lifeNear(aroundRise(blocks, passed), { threshold, closer })
  if (near === undefined) {
    return { life: { threshold, distance: null, watched, sentence: outlived(threshold, watched) }, onset: null }
  }
  const { crossing, onset } = near
  const metres = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value, 'length', { digits: 5 })
  const sentence = `Friction passed ${threshold} after ${metres(crossing.value)} (95 % from ${metres(crossing.low)} to ${metres(crossing.high)}).`
  return { life: { threshold, distance: crossing, watched, sentence }, onset }
}

/** The crossing, looked at a second time in finer blocks where the rise is short. */
function lifeNear(
  near: SlidingBlocks,
  { threshold, closer }: { threshold: number; closer: (from: number, to: number) => SlidingBlocks | undefined },
): { crossing: Bounded; onset: number } | undefined {
  const fitted = fitHoldLaw('failure', near)
  const crossing = fitted && crossingOf(fitted, near, threshold)
  if (fitted === undefined || crossing === undefined) return undefined
  const [onset, width] = fitted.fit.profile.best.at
  const reach = Math.max(2 * width, 20 * blockOf(near))
  const fine = closer(onset - reach, onset + width + reach)
  if (fine === undefined || fine.rowsPerBlock >= near.rowsPerBlock) return { crossing, onset }
  const refitted = fitHoldLaw('failure', fine)
  return { crossing: (refitted && crossingOf(refitted, fine, threshold)) ?? crossing, onset }
}

const blockOf = ({ distance }: SlidingBlocks): number =>
  (distance[distance.length - 1] - distance[0]) / (distance.length - 1)

const outlived = (threshold: number, watched: number): string =>
  `Friction did not pass ${threshold} for good within ${printQuantity(watched, 'length', { digits: 3 })}: the life is longer.`

/** First block of a run over the threshold that lasts, provided that friction was below before. */
function passing(friction: Float64Array, threshold: number): number | undefined {
  // A single low block inside a failed stretch is noise: what counts is the first run that lasts.
  for (let i = 1; i + sustained <= friction.length; i++) {
    const over = friction.subarray(i, i + sustained).every((value) => value > threshold)
    if (over && friction.subarray(0, i).some((value) => value < threshold)) return i
  }
  return undefined
}

/** Blocks around the rise: what lies far behind it may wander, and says nothing of when it began. */
function aroundRise(blocks: SlidingBlocks, passed: number): SlidingBlocks {
  const to = Math.min(blocks.friction.length, passed + Math.max(20, Math.ceil(passed / 4)))
  const from = Math.max(0, passed - 160)
  const cut = (values: Float64Array): Float64Array => values.subarray(from, to)
  return {
    ...blocks,
    friction: cut(blocks.friction),
    distance: cut(blocks.distance),
    time: cut(blocks.time),
    axialForce: cut(blocks.axialForce),
    turn: blocks.turn.map(cut),
  }
}

function crossingOf(fitted: FittedLaw, blocks: SlidingBlocks, threshold: number): Bounded | undefined {
  const { distance } = blocks
  const profile = fitted.fit.profile.widened(roughNoise * unrest(fitted, blocks))
  const [before, rise] = profile.best.coefficients
  const share = (threshold - before) / rise
  if (!(rise > 0 && share >= 0 && share <= 1)) return undefined
  const [onset, width] = profile.best.at
  const value = onset + share * width
  const at =
    (place: number) =>
    ([start, wide]: readonly number[]) =>
      ownWeights(fitted, [1, rampAt(place, { onset: start, width: wide })])
  const reach = profile.accepted().map(({ at: [start, wide] }) => [start, start + wide] as const)
  const low = Math.max(distance[0], Math.min(...reach.map(([start]) => start)))
  const high = Math.min(distance[distance.length - 1], Math.max(...reach.map(([, end]) => end)))
  const span = allowedSpan((place) => profile.allows(at(place), threshold), { value, low, high })
  return { value, ...span }
}

/** Noise of a ratio grows with friction, and a failing coating chatters: squares of the rows from the onset on over those of all, at least 1. */
function unrest({ fit }: FittedLaw, { friction, distance }: SlidingBlocks): number {
  const { coefficients, at } = fit.profile.best
  let [all, late, count] = [0, 0, 0]
  for (let i = 0; i < friction.length; i++) {
    const square = (friction[i] - fit.columns.reduce((sum, column, k) => sum + coefficients[k] * column[i], 0)) ** 2
    all += square
    if (distance[i] < at[0]) continue
    late += square
    count++
  }
  return count === 0 || !(all > 0) ? 1 : Math.max(1, late / count / (all / friction.length))
}

/**
 * Smallest and largest place around an allowed one that is allowed: outwards in growing strides, closed in by halving. `high` is
 * null where the end of the range itself is allowed.
 */
export function allowedSpan(
  allowed: (place: number) => boolean,
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
): { low: number; high: number | null } {
  const first = Math.max(Math.abs(high - low), Math.abs(value), Number.MIN_VALUE) * 1e-6
  const edge = (end: number): number | undefined => {
    const way = Math.sign(end - value)
    let inside = value
    for (let stride = first; way !== 0; stride *= 1.5) {
      const last = stride >= Math.abs(end - value)
      const next = last ? end : value + way * stride
      if (!allowed(next)) return between(allowed, inside, next)
      if (last) return undefined
      inside = next
    }
    return undefined
  }
  return { low: edge(low) ?? low, high: value >= high ? null : (edge(high) ?? null) }
}

function between(allowed: (place: number) => boolean, inside: number, outside: number): number {
  let [a, b] = [inside, outside]
  for (let i = 0; i < 25; i++) {
    const middle = (a + b) / 2
    if (allowed(middle)) a = middle
    else b = middle
  }
  return a
}
