import type { Metre, Ratio } from '../terms/index.ts'

/** Friction that starts a share `excess` above its steady value and nears it over the sliding distance. */
export interface RunningIn {
  readonly excess: Ratio
  readonly distance: Metre
}

/** 1 + excess·e^(−s/s₀). */
export const runningInFactor = (runningIn: RunningIn, slid: Metre): Ratio =>
  1 + runningIn.excess * Math.exp(-slid / runningIn.distance)
