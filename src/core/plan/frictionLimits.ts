import type { MetrePerSecond, Newton, Ratio } from '../terms/index.ts'
import { forceLine, type PlanBasis, speedLine } from './windowAxes.ts'

/**
 * The window at one load as friction over speed: which friction could be measured where. The limits are those of `planWindow`,
 * solved for friction; a place is free where friction lies over all of `floor`, `tilt` and `unsure` and under `ceiling`.
 */
export interface FrictionLimits {
  /** Under it the torque is too small. */
  readonly floor: Ratio
  /** Over it the torque is too large; infinite where the rig names no ceiling. */
  readonly ceiling: Ratio
  /** At each speed: under it a partial turn on a tilted plate could shift the value by more than is wanted. */
  readonly tilt: Float64Array
  /** At each speed: under it a point would be less sure than is wanted; infinite where even large friction would be. */
  readonly unsure: Float64Array
}

/** Limits of friction over speeds at a load. Throws RangeError for a load that is not above zero. */
export function frictionLimits(basis: PlanBasis, force: Newton, speeds: Float64Array): FrictionLimits {
  if (!(force > 0)) throw new RangeError(`force must be more than zero, got ${force} N`)
  const { question, geometry, noise } = basis
  const { rig, ask } = question
  const perFriction = forceLine(Float64Array.of(force), basis).perFriction[0]
  const line = speedLine(speeds, basis)
  const wanted = ask.uncertainty
  const scales =
    (rig.torque.scaleAccuracy ** 2 + rig.axialForce.scaleAccuracy ** 2) / 3 + geometry.leverLoadUncertainty ** 2
  const common = scales + (noise.forceZero / force) ** 2
  const unsureAt = (speed: MetrePerSecond, i: number): Ratio => {
    if (!(speed > 0)) throw new RangeError(`speed must be more than zero, got ${speed} m/s`)
    const share = 1 / line.readings[i]
    const room = wanted ** 2 - common - (noise.axialForce / force) ** 2 * share
    const torque = (noise.torque / perFriction) ** 2 * share + (noise.torqueZero / perFriction) ** 2
    return room > 0 ? Math.sqrt((torque + line.tilt[i] ** 2 / 3) / room) : Number.POSITIVE_INFINITY
  }
  return {
    floor: Math.max(rig.torque.floor ?? 0, noise.torqueZero / wanted) / perFriction,
    ceiling: (rig.torque.ceiling ?? Number.POSITIVE_INFINITY) / perFriction,
    tilt: line.tilt.map((tilt) => tilt / wanted),
    unsure: speeds.map(unsureAt),
  }
}
