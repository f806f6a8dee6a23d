import type { NewtonMetre, NewtonMetrePerRadian, Radian } from '../terms/index.ts'

/**
 * The shaft between motor and contact as a spring: the contact stands until the twist carries the friction torque.
 * Without mass; with it see the oscillator of stick and slip.
 */
export interface WindUp {
  /** Moves the motor on by `turned` and gives the torque in the shaft, which is never larger than friction can hold. */
  readonly turn: (turned: Radian, frictionTorque: NewtonMetre) => NewtonMetre
  readonly twist: () => Radian
}

/** A shaft without twist. Throws RangeError for a stiffness that is not positive. */
export function createWindUp(stiffness: NewtonMetrePerRadian): WindUp {
  if (!(stiffness > 0)) throw new RangeError(`stiffness must be positive, got ${stiffness} N·m/rad`)
  let twist = 0
  return {
    turn(turned, frictionTorque) {
      const most = Math.abs(frictionTorque) / stiffness
      twist = Math.max(-most, Math.min(most, twist + turned))
      return twist * stiffness
    },
    twist: () => twist,
  }
}
