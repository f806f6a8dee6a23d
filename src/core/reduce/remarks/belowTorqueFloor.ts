import { printQuantity } from '../../quantity/index.ts'
import type { NewtonMetre, Remark } from '../../terms/index.ts'

/** Friction torque of a step under what the rig, or the step's own noise, can tell from zero. */
export function belowTorqueFloor(seen: { torque: NewtonMetre; step: number }, limit: NewtonMetre): Remark | undefined {
  const size = Math.abs(seen.torque)
  if (!(size < limit)) return undefined
  return {
    kind: 'belowTorqueFloor',
    seen: size,
    limit,
    unit: 'N·m',
    step: seen.step,
    sentence: `The friction torque, ${printQuantity(size, 'torque', { digits: 3 })}, lies under the floor of ${printQuantity(limit, 'torque', { digits: 3 })}.`,
    next: 'Raise the axial force or the track radius, or leave this speed out.',
  }
}
