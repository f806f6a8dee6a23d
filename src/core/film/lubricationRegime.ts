import type { Ratio } from '../terms/index.ts'

/** How far the film parts the surfaces. */
export type LubricationRegime = 'boundary' | 'mixed' | 'fullFilm'

/** λ from which friction counts as mixed, and from which the film as full. Conventions: let people edit them. */
export interface LubricationBounds {
  readonly mixedFrom: Ratio
  readonly fullFilmFrom: Ratio
}

/** Boundary under 1, mixed to 3, full film above: usual for hard contacts (common practice, no source). */
export const usualBounds: LubricationBounds = { mixedFrom: 1, fullFilmFrom: 3 }

/** λ at which a soft contact left the mixed regime in one study (Bongaerts, Fourtouni & Stokes 2007, roughness 3.6 µm). */
export const softFullFilmSeen: Ratio = 0.7

/** The regime of a λ. A λ without upper bound is a full film. */
export function lubricationRegime(lambda: Ratio, bounds: LubricationBounds = usualBounds): LubricationRegime {
  checkBounds(bounds)
  if (!(lambda >= 0)) throw new RangeError(`λ must be zero or more, got ${lambda}`)
  if (lambda < bounds.mixedFrom) return 'boundary'
  return lambda < bounds.fullFilmFrom ? 'mixed' : 'fullFilm'
}

/** Throws RangeError unless 0 < mixedFrom ≤ fullFilmFrom. */
export function checkBounds({ mixedFrom, fullFilmFrom }: LubricationBounds): void {
  if (!(mixedFrom > 0 && mixedFrom <= fullFilmFrom && fullFilmFrom < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`bounds of λ must rise from above zero, got ${mixedFrom} and ${fullFilmFrom}`)
  }
}
