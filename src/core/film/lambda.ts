import { mustNotBeNegative } from '../contact/index.ts'
import type { Metre, Ratio } from '../terms/index.ts'

/** Roughness of both surfaces together, √(Rq₁² + Rq₂²). */
export function combinedRoughness(upper: Metre, lower: Metre): Metre {
  mustNotBeNegative(upper, 'roughness of the upper surface', 'm')
  mustNotBeNegative(lower, 'roughness of the lower surface', 'm')
  return Math.hypot(upper, lower)
}

/** λ = h/√(Rq₁² + Rq₂²), the film against what it has to cover; both surfaces perfectly smooth is a RangeError. */
export function lambdaRatio(minimumFilm: Metre, roughness: Metre): Ratio {
  mustNotBeNegative(minimumFilm, 'minimum film', 'm')
  if (!(roughness > 0 && roughness < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`combined roughness must be more than zero and finite, got ${roughness} m`)
  }
  return minimumFilm / roughness
}
