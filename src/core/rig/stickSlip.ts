import type { Random } from '../numeric/index.ts'
import type {
  KilogramMetreSquared,
  Metre,
  MetrePerSecond,
  Newton,
  NewtonMetrePerRadian,
  Ratio,
  Second,
} from '../terms/index.ts'
import { createScatteredSlip, type SlipDeviation } from './scatteredSlip.ts'
import { criticalSpeed, type Oscillator, springWave, stickSlipFrequency } from './stickSlipOscillator.ts'

/**
 * Stick and slip while the contact is slow. Friction swings about its kinetic value, so its mean stays true.
 * `sawTooth`: a rising ramp of ± `share` that falls back at once, `frequency` times a second.
 * `spring`: shape, frequency and speed limit from the shaft's stiffness and inertia and a static friction that lies
 * `staticExcess` (a share) above the kinetic.
 * `scatter`: standard deviation of the drop from cycle to cycle as a share of it; none if left out.
 */
export type StickSlip = { readonly scatter?: Ratio } & (
  | { readonly kind: 'sawTooth'; readonly below: MetrePerSecond; readonly frequency: number; readonly share: Ratio }
  | { readonly kind: 'spring'; readonly staticExcess: Ratio; readonly dampingRatio: Ratio }
)

/** The shaft behind the contact. */
export interface Shaft {
  readonly stiffness?: NewtonMetrePerRadian
  readonly inertia?: KilogramMetreSquared
  readonly lever: Metre
}

/** Factor on kinetic friction, `interval` after the last call. `kinetic` is the friction force now. */
export type StickSlipFactor = (speed: MetrePerSecond, kinetic: Newton, interval: Second) => Ratio

/** The factor over time. Throws RangeError, at its first use, for `spring` on a shaft without stiffness or inertia. */
export function createStickSlip(stickSlip: StickSlip, shaft: Shaft, random: Random): StickSlipFactor {
  const { scatter = 0 } = stickSlip
  if (scatter > 0) return scattered(stickSlip, shaft, createScatteredSlip(scatter, random))
  let phase = 0
  const turn = (cycles: number): number => {
    phase = (phase + cycles) % 1
    return phase
  }
  if (stickSlip.kind === 'sawTooth') {
    const { below, frequency, share } = stickSlip
    return (speed, _kinetic, interval) => (speed < below ? 1 + share * (2 * turn(frequency * interval) - 1) : 1)
  }
  const { staticExcess, dampingRatio } = stickSlip
  const { stiffness = 0, inertia = 0, lever } = shaft
  return (speed, kinetic, interval) => {
    if (!(kinetic > 0 && speed > 0)) return 1
    const oscillator: Oscillator = {
      stiffness: stiffness / lever ** 2,
      mass: inertia / lever ** 2,
      forceDrop: staticExcess * kinetic,
      dampingRatio,
    }
    if (speed >= criticalSpeed(oscillator)) return 1
    return 1 + staticExcess * springWave(oscillator, speed, turn(stickSlipFrequency(oscillator, speed) * interval))
  }
}

/** The same cycles with a drop of their own each. */
function scattered(stickSlip: StickSlip, shaft: Shaft, deviation: SlipDeviation): StickSlipFactor {
  if (stickSlip.kind === 'sawTooth') {
    const { below, frequency, share } = stickSlip
    return (speed, _kinetic, interval) =>
      speed < below ? 1 + deviation({ rate: 2 * share * frequency, drop: share }, interval) : 1
  }
  const { staticExcess, dampingRatio } = stickSlip
  const { stiffness = 0, inertia = 0, lever } = shaft
  return (speed, kinetic, interval) => {
    if (!(kinetic > 0 && speed > 0)) return 1
    const oscillator: Oscillator = {
      stiffness: stiffness / lever ** 2,
      mass: inertia / lever ** 2,
      forceDrop: staticExcess * kinetic,
      dampingRatio,
    }
    if (speed >= criticalSpeed(oscillator)) return 1
    const natural = Math.sqrt(oscillator.stiffness / oscillator.mass)
    const loading = { rate: oscillator.stiffness * speed, drop: oscillator.forceDrop, natural }
    return 1 + deviation(loading, interval) / kinetic
  }
}
