import { boxOf, type CurveMember, levelBounds, type Reach, shownParameter } from '../curveMember.ts'

/** μ = h: one level at all speeds. */
export function plateau(reach: Reach): CurveMember {
  return {
    name: 'plateau',
    names: ['lnLevel'],
    ...boxOf(levelBounds(reach)),
    levels: [0],
    shown: [shownParameter('h', [1])],
    starts: [[]],
    evaluate([level], { lnFriction, jacobian }) {
      lnFriction.fill(level)
      jacobian?.fill(1)
    },
    boundary: 0,
    regimes: null,
    share: null,
  }
}
