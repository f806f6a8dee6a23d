import type { NewtonMetre, Ratio, Second } from '../terms/index.ts'

/** The speed control swings by itself, with contact and without: an even wave in speed and torque. */
export interface Hunting {
  /** Hz */
  readonly frequency: number
  /** Amplitude of the speed as a share of it. */
  readonly speedShare: Ratio
  /** Amplitude of the torque. */
  readonly torque: NewtonMetre
}

/** Factor on the speed, and what is added to the torque a quarter of a wave later. */
export function huntingAt(
  { frequency, speedShare, torque }: Hunting,
  time: Second,
): { speed: Ratio; torque: NewtonMetre } {
  const phase = 2 * Math.PI * frequency * time
  return { speed: 1 + speedShare * Math.sin(phase), torque: torque * Math.cos(phase) }
}
