import type { Metre, Radian } from '../terms/index.ts'

/** Once-per-turn swing of the gap. An amplitude h on a track of radius R is a tilt of h/R. */
export interface GapRunOut {
  readonly amplitude: Metre
  readonly phase: Radian
}

/** Gap at the angle of the fixture, less its mean. */
export const gapSwing = (runOut: GapRunOut, angle: Radian): Metre => runOut.amplitude * Math.cos(angle + runOut.phase)
