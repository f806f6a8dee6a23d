import type { Metre, Ratio } from '../terms/index.ts'

/** A coating that fails: from a sliding distance on friction rises, over a further distance, to that of what lies below. */
export interface CoatingFailure {
  readonly distance: Metre
  /** 0 for a sudden failure. */
  readonly width: Metre
  readonly friction: Ratio
}

/** Friction after a distance, from that of the whole coating. */
export function failedFriction({ distance, width, friction }: CoatingFailure, whole: Ratio, slid: Metre): Ratio {
  const share = slid <= distance ? 0 : width > 0 ? Math.min(1, (slid - distance) / width) : 1
  return whole + (friction - whole) * share
}
