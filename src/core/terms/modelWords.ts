import type { CurveModelName } from './curve.ts'

/** Members of the curve family as people call them. */
export const modelWords: Readonly<Record<CurveModelName, string>> = {
  plateau: 'plateau',
  powerLaw: 'power law',
  stribeck: 'Stribeck curve, level at the slow end',
  stribeckSloped: 'Stribeck curve, sloped at the slow end',
  stribeckExponential: 'plateau, exponential fall and viscous rise',
}
