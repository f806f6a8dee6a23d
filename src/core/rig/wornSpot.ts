import type { Metre, Radian, Ratio } from '../terms/index.ts'

/** A place of the track that wears through: friction there grows with the distance. */
export interface WornSpot {
  /** Middle of the spot. */
  readonly angle: Radian
  /** Full width at half of the excess. */
  readonly width: Radian
  /** Final excess in the middle as a share of friction; below zero for a place that becomes slippery. */
  readonly excess: Ratio
  /** Distance at which it begins, and at which it has its final excess. */
  readonly from: Metre
  readonly to: Metre
}

/** 1 + excess × growth × a bell around the middle. */
export function wornSpotFactor(spot: WornSpot, angle: Radian, distance: Metre): Ratio {
  const growth = Math.min(1, Math.max(0, (distance - spot.from) / (spot.to - spot.from)))
  if (growth === 0) return 1
  const turn = 2 * Math.PI
  const apart = angle - spot.angle - turn * Math.round((angle - spot.angle) / turn)
  return 1 + spot.excess * growth * 2 ** -(((2 * apart) / spot.width) ** 2)
}
