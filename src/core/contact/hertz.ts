import type { Metre, Newton, Pascal } from '../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'
import { checkSphere } from './sphereOnFlat.ts'

// Scalars for inner loops; `hertzContact` says beside them what to doubt. All are those of Hertz 1882 in the form of
// Johnson 1985, Contact Mechanics, eqs. 4.22–4.24: elastic, smooth, frictionless, contact small against the radius.
// `radius` is the effective radius of both bodies, `modulus` their E*.

/** Radius of the contact, a = (3FR/4E*)^⅓. */
export function hertzRadius(load: Newton, radius: Metre, modulus: Pascal): Metre {
  checkSphere(radius, modulus)
  mustNotBeNegative(load, 'load', 'N')
  return Math.cbrt((0.75 * load * radius) / modulus)
}

/** Largest pressure, in the middle: p₀ = (6FE*²/π³R²)^⅓ = 3F/2πa². */
export function hertzPeakPressure(load: Newton, radius: Metre, modulus: Pascal): Pascal {
  checkSphere(radius, modulus)
  mustNotBeNegative(load, 'load', 'N')
  return Math.cbrt((6 * load * modulus ** 2) / radius ** 2) / Math.PI
}

/** Pressure spread evenly, two thirds of the largest. */
export const hertzMeanPressure = (load: Newton, radius: Metre, modulus: Pascal): Pascal =>
  (2 / 3) * hertzPeakPressure(load, radius, modulus)

/** By how much the bodies come together, δ = a²/R. */
export const hertzApproach = (load: Newton, radius: Metre, modulus: Pascal): Metre =>
  hertzRadius(load, radius, modulus) ** 2 / radius

/** Load at an approach, F = (4/3)E*√R·δ^(3/2): `hertzApproach` backwards. */
export function hertzLoad(approach: Metre, radius: Metre, modulus: Pascal): Newton {
  checkSphere(radius, modulus)
  mustNotBeNegative(approach, 'approach', 'm')
  return (4 / 3) * modulus * Math.sqrt(radius * approach) * approach
}

/**
 * Stiffness of a round contact, dF/dδ = 2aE*, in N/m: how much force one metre of run-out, growth or drift would make.
 * Holds for any body of revolution (Johnson 1985, §5.4).
 */
export function contactStiffness(contactRadius: Metre, modulus: Pascal): number {
  mustNotBeNegative(contactRadius, 'contact radius', 'm')
  mustBePositive(modulus, 'effective modulus', 'Pa')
  return 2 * contactRadius * modulus
}
