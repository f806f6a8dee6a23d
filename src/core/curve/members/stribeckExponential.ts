import {
  boxOf,
  type CurveMember,
  levelBounds,
  type Reach,
  shownParameter,
  speedBounds,
  speedsInside,
} from '../curveMember.ts'

/**
 * μ = c + (h − c) e^(−v/x0) + k v: a plateau c, a Stribeck term that fades from h at rest, and a viscous term. The general
 * form has e^(−(v/x0)^δ) (Armstrong-Hélouvry, Dupont & Canudas de Wit 1994, Automatica 30:1083, from memory); δ = 1 here,
 * as of Tustin 1947, because a sweep seldom tells δ from x0. All four are above zero. Inner level of the viscous term: its
 * friction at the fastest speed.
 */
export function stribeckExponential(reach: Reach): CurveMember {
  const { lnFastest } = reach
  return {
    name: 'stribeckExponential',
    names: ['lnPlateau', 'lnRest', 'lnViscous', 'lnX0'],
    ...boxOf(levelBounds(reach), levelBounds(reach), levelBounds(reach), speedBounds(reach)),
    levels: [0, 1, 2],
    shown: [
      shownParameter('c', [1, 0, 0, 0]),
      shownParameter('h', [0, 1, 0, 0]),
      shownParameter('k', [0, 0, 1, 0], { unit: 's/m', offset: -lnFastest }),
      shownParameter('x0', [0, 0, 0, 1], { unit: 'm/s' }),
    ],
    starts: speedsInside(reach, 8).map((lnX0) => [lnX0]),
    evaluate: (parameters, at) => evaluateExponential(parameters, { ...at, lnFastest }),
    boundary: 1,
    regimes: ([, , , lnX0]) => ({ mixedBegins: lnX0 + mixedAt, filmBegins: lnX0 + filmAt }),
    share: ([, , , lnX0], lnSpeed) => Math.exp(-Math.exp(lnSpeed - lnX0)),
  }
}

/** ln(v/x0) where e^(−v/x0) is 95 % and 5 %. */
const mixedAt = Math.log(-Math.log(0.95))
const filmAt = Math.log(-Math.log(0.05))

interface ExponentialEvaluation {
  readonly lnSpeeds: Float64Array
  readonly lnFriction: Float64Array
  readonly jacobian?: Float64Array
  readonly lnFastest: number
}

function evaluateExponential([lnPlateau, lnRest, lnViscous, lnX0]: Float64Array, at: ExponentialEvaluation): void {
  const { lnSpeeds, lnFriction, jacobian, lnFastest } = at
  const count = lnSpeeds.length
  const level = Math.exp(lnPlateau)
  const rest = Math.exp(lnRest)
  for (let i = 0; i < count; i++) {
    const ratio = Math.exp(lnSpeeds[i] - lnX0)
    const share = Math.exp(-ratio)
    const viscous = Math.exp(lnViscous + lnSpeeds[i] - lnFastest)
    const friction = level + (rest - level) * share + viscous
    lnFriction[i] = Math.log(friction)
    if (jacobian === undefined) continue
    jacobian[i] = (level * (1 - share)) / friction
    jacobian[count + i] = (rest * share) / friction
    jacobian[2 * count + i] = viscous / friction
    jacobian[3 * count + i] = ((rest - level) * share * ratio) / friction
  }
}
