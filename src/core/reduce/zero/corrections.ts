import type { TorqueBlank, ZeroLine } from '../../terms/index.ts'

/** All that is taken off a record before any division. */
export interface ZeroCorrections {
  readonly forceZero: ZeroLine
  readonly blank: TorqueBlank
  /** kg·m²; 0 where nobody knows it. */
  readonly inertia: number
}

/** Zero of the axial force at a time, N. */
export const valueAt = (line: ZeroLine, time: number): number => line.level + line.slope * (time - line.at)

/** No correction at all, for a record without blank. */
export const noForceZero: ZeroLine = {
  from: 'none',
  level: 0,
  slope: 0,
  at: 0,
  levelUncertainty: 0,
  slopeUncertainty: 0,
  rows: 0,
}

/** No correction at all, for a record without blank. */
export const noTorqueBlank: TorqueBlank = {
  from: 'none',
  level: 0,
  perSpeed: 0,
  covariance: [0, 0, 0],
  turn: [],
  rows: 0,
}
