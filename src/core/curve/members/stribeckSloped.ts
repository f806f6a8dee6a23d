import {
  boxOf,
  type CurveMember,
  levelBounds,
  type Reach,
  shownParameter,
  speedBounds,
  speedsInside,
} from '../curveMember.ts'

/** Odds of a boundary share of 95 %. */
const lnOdds = Math.log(19)

/** Bounds of the exponent of the film branch. */
export const filmExponent: readonly [number, number] = [-1, 2]
/** Bounds of the steepness of the transition; beyond them the data of a sweep tell nothing apart. */
export const steepness: readonly [number, number] = [0.2, 8]

/**
 * μ = μ_F + (μ_B − μ_F)/(1 + (v/x0)^m) with μ_F = k v^n and μ_B = h v^l: form after Bongaerts, Fourtouni & Stokes 2007
 * (Tribol. Int. 40:1531), constants from the data alone. Inner levels: film at the fastest, boundary at the slowest speed.
 */
export function stribeckSloped(reach: Reach): CurveMember {
  const { lnSlowest, lnFastest } = reach
  return {
    name: 'stribeckSloped',
    names: ['lnFilm', 'n', 'lnBoundary', 'lnX0', 'm', 'l'],
    ...boxOf(levelBounds(reach), filmExponent, levelBounds(reach), speedBounds(reach), steepness, [-1, 1]),
    levels: [0, 2],
    shown: [
      shownParameter('k', [1, -lnFastest, 0, 0, 0, 0]),
      shownParameter('n', [0, 1, 0, 0, 0, 0], { logarithmic: false }),
      shownParameter('h', [0, 0, 1, 0, 0, -lnSlowest]),
      shownParameter('x0', [0, 0, 0, 1, 0, 0], { unit: 'm/s' }),
      shownParameter('m', [0, 0, 0, 0, 1, 0], { logarithmic: false }),
      shownParameter('l', [0, 0, 0, 0, 0, 1], { logarithmic: false }),
    ],
    starts: transitionStarts(reach).map((start) => [...start, 0]),
    evaluate: (parameters, at) => evaluateStribeck(parameters, { ...at, lnSlowest, lnFastest }),
    boundary: 2,
    regimes: stribeckRegimes,
    share: stribeckShare,
  }
}

/** Starting values of n, ln x0 and m. */
export function transitionStarts(reach: Reach): readonly (readonly number[])[] {
  const starts: number[][] = []
  for (const lnX0 of speedsInside(reach, 6)) {
    for (const n of [0, 0.5]) for (const m of [0.8, 2]) starts.push([n, lnX0, m])
  }
  return starts
}

/** Speeds at which 1/(1 + (v/x0)^m) is 95 % and 5 %. */
export const stribeckRegimes = ([, , , lnX0, m]: Float64Array): { mixedBegins: number; filmBegins: number } => ({
  mixedBegins: lnX0 - lnOdds / m,
  filmBegins: lnX0 + lnOdds / m,
})

/** 1/(1 + (v/x0)^m). */
export const stribeckShare = ([, , , lnX0, m]: Float64Array, lnSpeed: number): number =>
  1 / (1 + Math.exp(m * (lnSpeed - lnX0)))

interface StribeckEvaluation {
  readonly lnSpeeds: Float64Array
  readonly lnFriction: Float64Array
  readonly jacobian?: Float64Array
  readonly lnSlowest: number
  readonly lnFastest: number
}

/** ln μ and its gradient; without a sixth parameter the boundary level does not depend on speed. */
export function evaluateStribeck(parameters: Float64Array, at: StribeckEvaluation): void {
  const { lnSpeeds, lnFriction, jacobian, lnSlowest, lnFastest } = at
  const [lnFilm, n, lnBoundary, lnX0, m] = parameters
  const sloped = parameters.length > 5
  const l = sloped ? parameters[5] : 0
  const count = lnSpeeds.length
  for (let i = 0; i < count; i++) {
    const lnV = lnSpeeds[i]
    const share = 1 / (1 + Math.exp(m * (lnV - lnX0)))
    const film = Math.exp(lnFilm + n * (lnV - lnFastest))
    const boundary = Math.exp(lnBoundary + l * (lnV - lnSlowest))
    const friction = film + (boundary - film) * share
    lnFriction[i] = Math.log(friction)
    if (jacobian === undefined) continue
    const ofFilm = (film * (1 - share)) / friction
    const ofBoundary = (boundary * share) / friction
    const ofShare = ((film - boundary) * share * (1 - share)) / friction
    jacobian[i] = ofFilm
    jacobian[count + i] = ofFilm * (lnV - lnFastest)
    jacobian[2 * count + i] = ofBoundary
    jacobian[3 * count + i] = -ofShare * m
    jacobian[4 * count + i] = ofShare * (lnV - lnX0)
    if (sloped) jacobian[5 * count + i] = ofBoundary * (lnV - lnSlowest)
  }
}
