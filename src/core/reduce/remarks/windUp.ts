import { printQuantity } from '../../quantity/index.ts'
import type { NewtonMetre, NewtonMetrePerRadian, RadianPerSecond, Ratio, Remark, Second } from '../../terms/index.ts'

/** What winds the shaft up, SI. */
export interface WindUpSeen {
  readonly torque: NewtonMetre
  readonly angularVelocity: RadianPerSecond
  readonly duration: Second
  readonly step: number
}

/** Share of a step in which the shaft winds up before the contact slides: M/(k Ω t). */
export const windUpShare = (seen: Omit<WindUpSeen, 'step'>, stiffness: NewtonMetrePerRadian): Ratio =>
  Math.abs(seen.torque) / (stiffness * Math.abs(seen.angularVelocity) * seen.duration)

/** Winding up the shaft takes more of the step than its settling allows. */
export function windUp(
  seen: WindUpSeen,
  stiffness: NewtonMetrePerRadian | undefined,
  limit: Ratio,
): Remark | undefined {
  if (stiffness === undefined) return undefined
  const share = windUpShare(seen, stiffness)
  // A shaft that stands has no step to take a share of: that is a start from rest.
  if (!(share > limit && share < Number.POSITIVE_INFINITY)) return undefined
  return {
    kind: 'windUp',
    seen: share,
    limit,
    unit: '',
    step: seen.step,
    sentence: `Winding up the shaft takes up to ${printQuantity(share, 'ratio', { digits: 2 })} of the step before the contact slides.`,
    next: 'Lengthen the step, or leave this speed out.',
  }
}
