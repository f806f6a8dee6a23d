import type { Radian, Ratio } from '../terms/index.ts'

/**
 * A share that comes back `order` times per turn: amplitude·cos(order·θ + phase). Where friction and force swing
 * together, by a and b and φ apart, the mean torque over the mean force is µ(1 + ½ab cos φ) and not µ.
 */
export interface TurnRipple {
  readonly order: number
  readonly amplitude: Ratio
  readonly phase: Radian
}

/** One plus all ripples at the angle θ of the fixture; its mean over a whole turn is one. */
export function rippleFactor(ripples: readonly TurnRipple[], angle: Radian): Ratio {
  let factor = 1
  for (const ripple of ripples) factor += ripple.amplitude * Math.cos(ripple.order * angle + ripple.phase)
  return factor
}
