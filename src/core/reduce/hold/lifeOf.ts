import { printQuantity } from '../../quantity/index.ts'
import type { Bounded, HoldLife } from '../../terms/index.ts'
import { type FittedLaw, fitHoldLaw, ownWeights } from './holdLaws.ts'
import { rampAt } from './rampMean.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

/** So many blocks in a row have to lie over the threshold before friction counts as having passed it for good. */
const sustained = 4

/**
 * Life to a friction threshold. Where friction passed it for good, a level, a rise and another level are fitted, and the
 * interval holds every distance at which that curve may cross the threshold; else the life is longer than what was slid.
 */
export function lifeOf(blocks: SlidingBlocks, threshold: number): HoldLife {
  const { distance, friction } = blocks
  const watched = distance[distance.length - 1]
  const passed = passing(friction, threshold)
  const near = passed === undefined ? undefined : aroundRise(blocks, passed)
  const fitted = near && fitHoldLaw('failure', near)
  const crossing = fitted && crossingOf(fitted, near, threshold)
  if (crossing === undefined) return { threshold, distance: null, watched, sentence: outlived(threshold, watched) }
  const metres = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value, 'length', { digits: 3 })
  const sentence = `Friction passed ${threshold} after ${metres(crossing.value)} (95 % from ${metres(crossing.low)} to ${metres(crossing.high)}).`
  return { threshold, distance: crossing, watched, sentence }
}

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

function crossingOf(fitted: FittedLaw, { distance }: SlidingBlocks, threshold: number): Bounded | undefined {
  const { profile } = fitted.fit
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
  const span = allowedSpan((place) => profile.allows(at(place), threshold), { low, high })
  // A block is the finest that a life can be told to.
  const block = (distance[distance.length - 1] - distance[0]) / (distance.length - 1)
  return {
    value,
    low: Math.min(span?.low ?? value, value - block / 2),
    high: span?.high === null ? null : Math.max(span?.high ?? value, value + block / 2),
  }
}

/** Smallest and largest place that is allowed, found on a grid and closed in by halving; `high` null where the end itself is. */
export function allowedSpan(
  allowed: (place: number) => boolean,
  { low, high }: { readonly low: number; readonly high: number },
): { low: number; high: number | null } | undefined {
  const looks = 400
  const place = (i: number): number => low + ((high - low) * i) / looks
  const found = Array.from({ length: looks + 1 }, (_, i) => i).filter((i) => allowed(place(i)))
  if (found.length === 0) return undefined
  const edge = (inside: number, outside: number): number => {
    let [a, b] = [place(inside), place(outside)]
    for (let i = 0; i < 20; i++) {
      const middle = (a + b) / 2
      if (allowed(middle)) a = middle
      else b = middle
    }
    return a
  }
  const [first] = found
  const last = found[found.length - 1]
  return {
    low: first === 0 ? low : edge(first, first - 1),
    high: last === looks ? null : edge(last, last + 1),
  }
}
