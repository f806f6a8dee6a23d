/**
 * First row from which the speed stays within `tolerance` of its target; rows in `speed` are positive. Undefined where
 * it never does. Means over five rows stand for the rows, so that noise on the speed channel does not count.
 */
export function settledFrom(speed: Float64Array, target: number, tolerance: number): number | undefined {
  const goal = Math.abs(target)
  const limit = tolerance * goal
  const off = (at: number): boolean =>
    !(Math.abs(speed[at] - goal) <= limit) && !(Math.abs(aroundMean(speed, at) - goal) <= limit)
  let from = speed.length
  while (from > 0 && !off(from - 1)) from--
  return from === speed.length ? undefined : from
}

const halfWidth = 2

function aroundMean(speed: Float64Array, at: number): number {
  const from = Math.max(0, at - halfWidth)
  const to = Math.min(speed.length, at + halfWidth + 1)
  let sum = 0
  for (let i = from; i < to; i++) sum += speed[i]
  return sum / (to - from)
}
