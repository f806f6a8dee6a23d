import { boxOf, type CurveMember, levelBounds, type Reach, shownParameter, speedBounds } from '../curveMember.ts'
import {
  evaluateStribeck,
  filmExponent,
  steepness,
  stribeckRegimes,
  stribeckShare,
  transitionStarts,
} from './stribeckSloped.ts'

/** The Stribeck form with a boundary level that does not depend on speed: `stribeckSloped` with l = 0. */
export function stribeck(reach: Reach): CurveMember {
  const { lnSlowest, lnFastest } = reach
  return {
    name: 'stribeck',
    names: ['lnFilm', 'n', 'lnBoundary', 'lnX0', 'm'],
    ...boxOf(levelBounds(reach), filmExponent, levelBounds(reach), speedBounds(reach), steepness),
    levels: [0, 2],
    shown: [
      shownParameter('k', [1, -lnFastest, 0, 0, 0]),
      shownParameter('n', [0, 1, 0, 0, 0], { logarithmic: false }),
      shownParameter('h', [0, 0, 1, 0, 0]),
      shownParameter('x0', [0, 0, 0, 1, 0], { unit: 'm/s' }),
      shownParameter('m', [0, 0, 0, 0, 1], { logarithmic: false }),
    ],
    starts: transitionStarts(reach),
    evaluate: (parameters, at) => evaluateStribeck(parameters, { ...at, lnSlowest, lnFastest }),
    boundary: 2,
    regimes: stribeckRegimes,
    share: stribeckShare,
  }
}
