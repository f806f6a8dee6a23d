import { CurveAt } from './curveAt.ts'
import type { FeatureName } from './curveFeature.ts'
import { type CurveMember, levelBounds, type Reach, type RegimeSpeeds, speedBounds } from './curveMember.ts'
import { type CurveQuantity, linearQuantity, smoothQuantity } from './curveQuantity.ts'
import type { MemberFit } from './fitMember.ts'
import { leastFriction } from './leastFriction.ts'
import { leastSpeedProfile, profile, type SignedRoot } from './profile.ts'

/** Size of the root up to which profiles are followed: beyond it less than 0.3 % is left in a tail. */
export const followedRoot = 2.8

/** Steepest slope that is followed. */
const steepestSlope = 5

/** Whether a feature's interval is made in its logarithm. */
export const isLogarithmic = (name: FeatureName): boolean => name !== 'filmSlope'

/** Range over which a feature is followed, in the scale of its interval: a decade beyond the data for the regimes. */
export function featureReach(name: FeatureName, reach: Reach): { low: number; high: number } {
  const between = ([low, high]: readonly [number, number]): { low: number; high: number } => ({ low, high })
  switch (name) {
    case 'boundaryLevel':
    case 'minimumFriction':
      return between(levelBounds(reach))
    case 'minimumSpeed':
      return { low: reach.lnSlowest, high: reach.lnFastest }
    case 'filmSlope':
      return { low: -steepestSlope, high: steepestSlope }
    default:
      return between(speedBounds(reach))
  }
}

/** Profile of one feature that the member can have, in the scale of its interval. */
export function featureProfile(fit: MemberFit, name: FeatureName, reach: Reach): SignedRoot {
  const along = { ...featureReach(name, reach), root: followedRoot }
  if (name !== 'minimumSpeed') return profile(fit, quantityOf(fit.member, name, reach), along)
  return leastSpeedProfile(fit, leastFriction(fit.member, fit.parameters, reach).lnSpeed, along)
}

function quantityOf(member: CurveMember, name: Exclude<FeatureName, 'minimumSpeed'>, reach: Reach): CurveQuantity {
  switch (name) {
    case 'boundaryLevel':
      return linearQuantity(Float64Array.from(member.names, (_, j) => (j === member.boundary ? 1 : 0)))
    case 'minimumFriction':
      return leastQuantity(member, reach)
    case 'filmSlope':
      return smoothQuantity((parameters) => new CurveAt(member, parameters).slope(reach.lnFastest))
    default:
      return regimeQuantity(member, name)
  }
}

function regimeQuantity({ regimes, name }: CurveMember, which: keyof RegimeSpeeds): CurveQuantity {
  if (regimes === null) throw new RangeError(`${name} has no regimes`)
  return smoothQuantity((parameters) => regimes(parameters)[which])
}

/** Least friction; its gradient is that of ln μ at the speed where it lies. */
function leastQuantity(member: CurveMember, reach: Reach): CurveQuantity {
  const lnSpeeds = new Float64Array(1)
  const lnFriction = new Float64Array(1)
  return {
    value: (parameters) => leastFriction(member, parameters, reach).lnFriction,
    gradient(parameters, out) {
      lnSpeeds[0] = leastFriction(member, parameters, reach).lnSpeed
      member.evaluate(parameters, { lnSpeeds, lnFriction, jacobian: out })
    },
  }
}
