import type { RemarkKind } from './remark.ts'

/**
 * How much a finding weighs. `stops`: the value it stands on must not be used as it is.
 * `caution`: usable, with care. `note`: good to know, nothing is wrong yet.
 */
export type RemarkWeight = 'stops' | 'caution' | 'note'

/** The few words by which people know a remark, and its weight. Pictures, tables and pages share them. */
export const remarkWords: Readonly<Record<RemarkKind, { readonly words: string; readonly weight: RemarkWeight }>> = {
  belowTorqueFloor: { words: 'torque under the floor', weight: 'stops' },
  torqueAtCeiling: { words: 'torque at the ceiling', weight: 'stops' },
  forceOffTarget: { words: 'axial force off target', weight: 'caution' },
  contactLost: { words: 'contact lost', weight: 'stops' },
  notSteady: { words: 'not steady', weight: 'caution' },
  windowMoved: { words: 'window moved by hand', weight: 'note' },
  underOneTurn: { words: 'under one turn', weight: 'caution' },
  forceRipple: { words: 'force ripple per turn', weight: 'caution' },
  frictionRipple: { words: 'friction ripple per turn', weight: 'caution' },
  stickSlip: { words: 'stick–slip', weight: 'stops' },
  hunting: { words: 'hunting of the controller', weight: 'caution' },
  ringing: { words: 'ringing of the shaft', weight: 'caution' },
  temperatureOff: { words: 'temperature off', weight: 'caution' },
  gapCreep: { words: 'gap creeping', weight: 'caution' },
  scarsUnequal: { words: 'unequal scars', weight: 'caution' },
  scarNotRound: { words: 'scar not round', weight: 'caution' },
  wearMayBeDrift: { words: 'wear may be drift', weight: 'caution' },
  pressureMoved: { words: 'pressure moved by wear', weight: 'caution' },
  wornSpot: { words: 'spot wearing through', weight: 'caution' },
  notCollapsed: { words: 'liquids do not collapse', weight: 'caution' },
  speedNotReached: { words: 'speed not reached', weight: 'stops' },
  tooFewSamples: { words: 'too few samples', weight: 'stops' },
  windUp: { words: 'wind-up of the shaft', weight: 'caution' },
  inertia: { words: 'inertia in the torque', weight: 'caution' },
  drag: { words: 'drag of the liquid', weight: 'caution' },
  forceZeroMissing: { words: 'no zero of the axial force', weight: 'caution' },
  forceZeroDrift: { words: 'zero of the axial force drifted', weight: 'caution' },
  torqueBlankMissing: { words: 'no torque blank', weight: 'note' },
  angleFromSpeed: { words: 'angle summed from the speed', weight: 'note' },
  limitNotGiven: { words: 'limit not given', weight: 'note' },
  rowsLeftOut: { words: 'rows left out', weight: 'note' },
  cellsLeftEmpty: { words: 'cells left empty', weight: 'note' },
  timeRunsOn: { words: 'time runs on over the steps', weight: 'note' },
  oneSpeedOnly: { words: 'one speed only', weight: 'note' },
  directionsDiffer: { words: 'up and down differ', weight: 'caution' },
  fitStopped: { words: 'fit stopped early', weight: 'caution' },
  parameterAtBound: { words: 'parameter at its bound', weight: 'caution' },
  notEnoughPoints: { words: 'not enough points', weight: 'caution' },
  scatterBeyondOwn: { words: 'scatter beyond the own part', weight: 'caution' },
  notRunIn: { words: 'not run in', weight: 'caution' },
  coatingFailed: { words: 'friction passed its threshold', weight: 'caution' },
  noBreakaway: { words: 'no breakaway', weight: 'caution' },
  peakNotStatic: { words: 'peak is not static friction', weight: 'caution' },
}
