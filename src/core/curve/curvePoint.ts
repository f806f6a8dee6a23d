import type { MetrePerSecond } from '../terms/index.ts'
import type { Reach } from './curveMember.ts'

/** What the curve needs to know of one step. */
export interface CurvePoint {
  /** Above zero; any other axis (η v/W, λ …) does as well, and the answers are then on that axis. */
  readonly slidingSpeed: MetrePerSecond
  /** Above zero. */
  readonly friction: number
  /** Own standard uncertainty of friction, in units of friction. Zero where nobody knows it. */
  readonly ownUncertainty: number
  /** Of the own uncertainty; over 0, may be Infinity. */
  readonly degreesOfFreedom: number
}

/** Points in the scale of the fit: logarithms, and uncertainties as a share of friction. Sorted by speed. */
export interface Observations {
  readonly lnSpeeds: Float64Array
  readonly lnFriction: Float64Array
  readonly own: Float64Array
  readonly freedom: Float64Array
}

/** No step is known better than this share of friction, so that one flawless point cannot outweigh all the others. */
const leastOwn = 1e-7

/** Own degrees of freedom under which a Student loss has no curvature to speak of. */
const leastFreedom = 1.5

/** Throws RangeError for a point that is not a number or not above zero: the caller leaves out what it does not trust. */
export function observationsOf(points: readonly CurvePoint[]): Observations {
  for (const [i, point] of points.entries()) {
    refuse(`slidingSpeed of point ${i}`, point.slidingSpeed, point.slidingSpeed > 0 && point.slidingSpeed < Infinity)
    refuse(`friction of point ${i}`, point.friction, point.friction > 0 && point.friction < Infinity)
    refuse(
      `ownUncertainty of point ${i}`,
      point.ownUncertainty,
      point.ownUncertainty >= 0 && point.ownUncertainty < Infinity,
    )
    refuse(`degreesOfFreedom of point ${i}`, point.degreesOfFreedom, point.degreesOfFreedom > 0)
  }
  const sorted = [...points].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  return {
    lnSpeeds: Float64Array.from(sorted, (p) => Math.log(p.slidingSpeed)),
    lnFriction: Float64Array.from(sorted, (p) => Math.log(p.friction)),
    own: Float64Array.from(sorted, (p) => Math.max(leastOwn, p.ownUncertainty / p.friction)),
    freedom: Float64Array.from(sorted, (p) => Math.max(leastFreedom, Math.min(1e9, p.degreesOfFreedom))),
  }
}

function refuse(what: string, value: number, fine: boolean): void {
  if (!fine) throw new RangeError(`${what} is out of range, got ${value}`)
}

/** Where the data begin and end. */
export function reachOf({ lnSpeeds, lnFriction }: Observations): Reach {
  return {
    lnSlowest: lnSpeeds[0],
    lnFastest: lnSpeeds[lnSpeeds.length - 1],
    lnLeast: Math.min(...lnFriction),
    lnMost: Math.max(...lnFriction),
  }
}
