import type { Signals } from '../signals.ts'
import type { ZeroCorrections } from './corrections.ts'

/**
 * Torque less blank and inertia.
 *
 * @param acceleration of the same rows; worked out from them if not given
 */
export function correctedTorque(
  signals: Pick<Signals, 'time' | 'angularVelocity' | 'torque' | 'angle'>,
  { blank, inertia }: ZeroCorrections,
  acceleration?: Float64Array,
): Float64Array {
  const { angularVelocity, torque } = signals
  if (blank.from === 'none' && inertia === 0) return torque
  const corrected = new Float64Array(torque.length)
  for (let i = 0; i < corrected.length; i++) {
    corrected[i] = torque[i] - blank.level - blank.perSpeed * angularVelocity[i]
  }
  for (const { order, cosine, sine } of blank.turn) {
    const { angle } = signals
    for (let i = 0; i < corrected.length; i++) {
      corrected[i] -= cosine * Math.cos(order * angle[i]) + sine * Math.sin(order * angle[i])
    }
  }
  if (inertia !== 0) {
    const known = acceleration ?? accelerationOf(signals.time, angularVelocity)
    for (let i = 0; i < corrected.length; i++) corrected[i] -= inertia * known[i]
  }
  return corrected
}

/** Central differences over three rows, one-sided at the ends. */
export function accelerationOf(time: Float64Array, speed: Float64Array): Float64Array {
  const last = time.length - 1
  const acceleration = new Float64Array(time.length)
  for (let i = 0; i <= last; i++) {
    const a = Math.max(0, i - 1)
    const b = Math.min(last, i + 1)
    const span = time[b] - time[a]
    acceleration[i] = span > 0 ? (speed[b] - speed[a]) / span : 0
  }
  return acceleration
}
