import type { Feature } from '../terms/index.ts'
import { CurveAt } from './curveAt.ts'
import type { CurveMember, Reach } from './curveMember.ts'
import { leastFriction } from './leastFriction.ts'

/** Names of the features that a curve may have. */
export type FeatureName = Feature['name']

/**
 * Values of the features of one curve; null where such a curve has none.
 *
 * - boundaryLevel: friction of the boundary branch at the slowest speed of the data
 * - minimumSpeed, minimumFriction: least friction inside the data, with friction rising on both sides
 * - filmSlope: d ln μ / d ln v at the fastest speed of the data
 * - mixedBegins, filmBegins: speeds at which the share of the boundary branch has fallen to 95 % and to 5 %
 */
export type FeatureValues = Readonly<Record<FeatureName, number | null>>

/** Whether curves of this member can have the feature at all. */
export function canHave(member: CurveMember, name: FeatureName): boolean {
  switch (name) {
    case 'boundaryLevel':
      return member.boundary !== null
    case 'filmSlope':
      return member.name !== 'plateau'
    default:
      return member.regimes !== null
  }
}

/** Features of a member with given inner parameters, over the speeds that the data reach. */
export function featureValues(member: CurveMember, parameters: Float64Array, reach: Reach): FeatureValues {
  const least = leastFriction(member, parameters, reach)
  const turns = canHave(member, 'minimumSpeed') && least.where === 'inside'
  const regimes = member.regimes === null ? null : member.regimes(parameters)
  return {
    boundaryLevel: member.boundary === null ? null : Math.exp(parameters[member.boundary]),
    minimumSpeed: turns ? Math.exp(least.lnSpeed) : null,
    minimumFriction: turns ? Math.exp(least.lnFriction) : null,
    filmSlope: canHave(member, 'filmSlope') ? new CurveAt(member, parameters).slope(reach.lnFastest) : null,
    mixedBegins: regimes === null ? null : Math.exp(regimes.mixedBegins),
    filmBegins: regimes === null ? null : Math.exp(regimes.filmBegins),
  }
}
