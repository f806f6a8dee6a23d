import type { CurveModelName } from '../terms/index.ts'
import type { CurveMember, Reach } from './curveMember.ts'
import { plateau } from './members/plateau.ts'
import { powerLaw } from './members/powerLaw.ts'
import { stribeck } from './members/stribeck.ts'
import { stribeckExponential } from './members/stribeckExponential.ts'
import { stribeckSloped } from './members/stribeckSloped.ts'

/** The members of the curve family, simplest first. */
export const curveFamily: Readonly<Record<CurveModelName, (reach: Reach) => CurveMember>> = {
  plateau,
  powerLaw,
  stribeck,
  stribeckSloped,
  stribeckExponential,
}
