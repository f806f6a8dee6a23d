/** Findings on a point, a record or a curve. */
export const remarkKinds = [
  'belowTorqueFloor',
  'torqueAtCeiling',
  'forceOffTarget',
  'contactLost',
  'notSteady',
  'windowMoved',
  'underOneTurn',
  'forceRipple',
  'frictionRipple',
  'stickSlip',
  'hunting',
  'ringing',
  'temperatureOff',
  'gapCreep',
  'scarsUnequal',
  'scarNotRound',
  'wearMayBeDrift',
  'pressureMoved',
  'wornSpot',
  'notCollapsed',
  'speedNotReached',
  'tooFewSamples',
  'windUp',
  'inertia',
  'drag',
  'forceZeroMissing',
  'forceZeroDrift',
  'torqueBlankMissing',
  'angleFromSpeed',
  'limitNotGiven',
  'rowsLeftOut',
  'cellsLeftEmpty',
  'timeRunsOn',
  'oneSpeedOnly',
  'directionsDiffer',
  'fitStopped',
  'parameterAtBound',
  'notEnoughPoints',
  'scatterBeyondOwn',
  'notRunIn',
  'coatingFailed',
  'noBreakaway',
  'peakNotStatic',
] as const

/** Stable name of one finding. */
export type RemarkKind = (typeof remarkKinds)[number]

/**
 * A finding as data, with the number that tripped it (SI). It never blocks; a person or better data answers it.
 * `sentence` says the same in words with the unit; `next` what to do about it.
 */
export interface Remark {
  readonly kind: RemarkKind
  readonly seen: number
  readonly limit: number
  /** SI unit of `seen` and `limit`, "" for ratios and counts. */
  readonly unit: string
  /** Step number as in the record, absent for a finding on the whole record. */
  readonly step?: number
  readonly sentence: string
  readonly next: string
}
