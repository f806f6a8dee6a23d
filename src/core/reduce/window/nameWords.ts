import type { WindowLimitName } from '../../terms/index.ts'

const names: Readonly<Record<WindowLimitName, string>> = {
  torqueFloor: 'the torque floor',
  torqueCeiling: 'the torque ceiling',
  forceZero: 'the zero of the axial force',
  partialTurn: 'a turn that was not completed',
  windUp: 'wind-up of the shaft',
  inertia: 'inertia',
  drag: 'drag of the liquid',
  contact: 'an unsteady contact',
  data: 'the end of the data',
}

/** A limit as people call it. */
export const nameWords = (name: WindowLimitName): string => names[name]
