import type { WindowLimitName } from '../core/terms/index.ts'

/** The few words under which a limit of the believable window is drawn. */
export const limitWords: Readonly<Record<WindowLimitName, string>> = {
  torqueFloor: 'torque floor',
  torqueCeiling: 'torque ceiling',
  forceZero: 'zero of the axial force',
  partialTurn: 'partial turn',
  windUp: 'wind-up',
  inertia: 'inertia',
  drag: 'drag of the liquid',
  contact: 'unsteady contact',
  data: 'end of the data',
}
