import type { PairSeen } from './pairSeen.ts'

/** How well a shape along the speeds explains the loop: share of its weighted squares, 0 to 1, and the factor that fits. */
export interface Explained {
  readonly share: number
  readonly factor: number
}

/** Relative difference of a pair, up less down. */
export const relative = ({ difference, up, down }: PairSeen): number =>
  (2 * difference) / (up.point.friction + down.point.friction)

const weightOf = ({ own, up, down }: PairSeen): number => ((up.point.friction + down.point.friction) / (2 * own)) ** 2

/** Least squares of the relative differences on one shape, through zero. No shape, no share. */
export function explainedBy(seen: readonly PairSeen[], shape: readonly number[]): Explained {
  let xx = 0
  let xy = 0
  let yy = 0
  for (const [i, pair] of seen.entries()) {
    // Pairs that are known to a thousandth must not silence those that are known to a hundredth.
    const weight = Math.min(weightOf(pair), 1e6)
    const y = relative(pair)
    xx += weight * shape[i] ** 2
    xy += weight * shape[i] * y
    yy += weight * y * y
  }
  if (!(xx > 0 && yy > 0)) return { share: 0, factor: 0 }
  return { share: (xy * xy) / (xx * yy), factor: xy / xx }
}

/** d ln µ / d ln v of the mean of both directions, by differences between neighbours. */
export function slopesOf(seen: readonly PairSeen[]): number[] {
  const ln = seen.map(({ speed }) => Math.log(speed))
  const mu = seen.map(({ up, down }) => Math.log((up.point.friction + down.point.friction) / 2))
  const last = seen.length - 1
  return seen.map((_, i) => {
    const [a, b] = [Math.max(0, i - 1), Math.min(last, i + 1)]
    return b > a ? (mu[b] - mu[a]) / (ln[b] - ln[a]) : 0
  })
}

/** Running-in on the way: what is left of an excess after the distance slid, up less down, with the length that fits best. */
export function fadingShape(seen: readonly PairSeen[]): { shape: number[]; length: number } {
  const distances = seen.flatMap(({ up, down }) => [up.distance, down.distance])
  const [least, most] = [Math.min(...distances), Math.max(...distances)]
  const shapeAt = (length: number): number[] =>
    seen.map(({ up, down }) => Math.exp(-(up.distance - least) / length) - Math.exp(-(down.distance - least) / length))
  let best = { shape: shapeAt(most), length: most, share: -1 }
  for (let i = 0; i <= 60; i++) {
    const length = (most / 1000) * 3000 ** (i / 60)
    const shape = shapeAt(length)
    const { share, factor } = explainedBy(seen, shape)
    if (factor > 0 && share > best.share) best = { shape, length, share }
  }
  return best
}
