import { boxOf, type CurveMember, levelBounds, type Reach, shownParameter } from '../curveMember.ts'

/** μ = k v^n: one regime at all speeds. Inner level at the geometric middle of the data. */
export function powerLaw(reach: Reach): CurveMember {
  const middle = (reach.lnSlowest + reach.lnFastest) / 2
  return {
    name: 'powerLaw',
    names: ['lnLevel', 'n'],
    ...boxOf(levelBounds(reach), [-3, 3]),
    levels: [0],
    shown: [shownParameter('k', [1, -middle]), shownParameter('n', [0, 1], { logarithmic: false })],
    starts: [[0], [-0.5], [0.5]],
    evaluate([level, exponent], { lnSpeeds, lnFriction, jacobian }) {
      const count = lnSpeeds.length
      for (let i = 0; i < count; i++) {
        const distance = lnSpeeds[i] - middle
        lnFriction[i] = level + exponent * distance
        if (jacobian === undefined) continue
        jacobian[i] = 1
        jacobian[count + i] = distance
      }
    },
    boundary: null,
    regimes: null,
    share: null,
  }
}
