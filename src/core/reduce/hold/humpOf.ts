import type { Hold } from '../../terms/index.ts'
import type { CorrelatedProfile } from '../profile/correlatedProfile.ts'
import { plainCombination } from '../profile/plainCombination.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

/** Windows that the distance is cut into, and the share of it in which a hump of running-in has its top. */
const windows = 60
const early = 0.25

/** Smallest height as a share of friction that is called a hump. Common practice, no source. */
const leastHeight = 0.05

/**
 * A hump of running-in: friction that rises and falls again early on. The top is the window of the first quarter that stands
 * highest over the lowest one before it and over the lowest one after it within the first half; its height is counted from
 * the higher of those two. Null where no such top is at least a twentieth of friction high. The interval is for these
 * three windows as they are; that they were picked is not in it.
 */
export function humpOf({ friction, distance }: SlidingBlocks, noise: CorrelatedProfile): Hold['hump'] {
  const width = Math.max(1, Math.round(friction.length / windows))
  const count = Math.floor(friction.length / width)
  const level = (w: number): number => {
    let sum = 0
    for (let i = 0; i < width; i++) sum += friction[w * width + i]
    return sum / width
  }
  const levels = Array.from({ length: count }, (_, w) => level(w))
  const lowest = (from: number, to: number): number => {
    let best = from
    for (let w = from; w < to; w++) if (levels[w] < levels[best]) best = w
    return best
  }
  let found: { top: number; foot: number; height: number } | undefined
  for (let top = 1; top < early * count; top++) {
    const [before, after] = [lowest(0, top), lowest(top + 1, Math.max(top + 2, Math.floor(count / 2)))]
    const foot = levels[before] > levels[after] ? before : after
    const height = levels[top] - levels[foot]
    if (found === undefined || height > found.height) found = { top, foot, height }
  }
  if (found === undefined || !(found.height > leastHeight * Math.abs(levels[found.foot]))) return null
  const { top, foot } = found
  const weights = new Float64Array(friction.length)
  weights.fill(1 / width, top * width, (top + 1) * width)
  weights.fill(-1 / width, foot * width, (foot + 1) * width)
  const { value, low, high } = plainCombination(friction, weights, noise)
  const base = Math.abs(levels[foot])
  const share = (end: number | null): number | null => (end === null ? null : end / base)
  const middle = top * width + (width >> 1)
  return { at: distance[middle], height: { value: value / base, low: share(low), high: share(high) } }
}
