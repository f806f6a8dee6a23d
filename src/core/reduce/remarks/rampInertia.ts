import { printQuantity } from '../../quantity/index.ts'
import type { KilogramMetreSquared, NewtonMetre, Ratio, Remark } from '../../terms/index.ts'

/** What a ramp asks of the shaft. */
export interface InertiaSeen {
  /** Mean angular acceleration over the kept rows, rad/s². */
  readonly acceleration: number
  readonly torque: NewtonMetre
  readonly step: number
}

/** Inertia torque as a share of friction torque: I·dΩ/dt/M. */
export const inertiaShare = (seen: InertiaSeen, inertia: KilogramMetreSquared): Ratio =>
  Math.abs((inertia * seen.acceleration) / seen.torque)

/** Speeding up the shaft takes more than a share of the friction torque. */
export function rampInertia(seen: InertiaSeen, inertia: KilogramMetreSquared, limit: Ratio): Remark | undefined {
  const share = inertiaShare(seen, inertia)
  if (!(share > limit)) return undefined
  return {
    kind: 'inertia',
    seen: share,
    limit,
    unit: '',
    step: seen.step,
    sentence: `Speeding up the shaft takes ${printQuantity(share, 'ratio', { digits: 2 })} of the friction torque; it is taken off.`,
    next: 'Ramp more slowly or use held speeds.',
  }
}
