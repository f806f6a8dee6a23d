import {
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type MetrePerSecond,
  type Newton,
} from '../terms/index.ts'
import { slidingOfEntrainment } from './conditions.ts'
import { type FilmLaw, speedOfFilm } from './filmLaw.ts'
import { thickestFilm } from './filmThickness.ts'
import { lambdaRatio } from './lambda.ts'
import { checkBounds, type LubricationBounds, usualBounds } from './lubricationRegime.ts'

/** Sliding speeds at which λ reaches its bounds in pure sliding. */
export interface RegimeSpeeds extends Explained {
  readonly mixedFrom: MetrePerSecond
  readonly fullFilmFrom: MetrePerSecond
  readonly bounds: LubricationBounds
}

/** What decides where the regimes begin. */
export interface RegimeQuestion {
  /** Pair and liquid, see `filmLaw`. */
  readonly law: FilmLaw
  readonly load: Newton
  /** Of both surfaces together, see `combinedRoughness`. */
  readonly roughness: Metre
  readonly bounds?: LubricationBounds
}

/**
 * Speeds at which the regimes begin, by the minimum film backwards. The viscosity is taken as constant: for a shear-thinning
 * liquid see `filmWithThinning`.
 */
export function regimeSpeeds({ law, load, roughness, bounds = usualBounds }: RegimeQuestion): RegimeSpeeds {
  checkBounds(bounds)
  lambdaRatio(0, roughness)
  const reaching = (lambda: number): MetrePerSecond => slidingOfEntrainment(speedOfFilm(lambda * roughness, load, law))
  return {
    mixedFrom: reaching(bounds.mixedFrom),
    fullFilmFrom: reaching(bounds.fullFilmFrom),
    bounds,
    law: 'minimum film over combined roughness at the bounds of λ, pure sliding, u = v/2',
    source: 'films after Hamrock & Dowson (see `explainFilm`); bounds by convention',
    valid:
      'One viscosity at all speeds, smooth-surface film, flooded inlet. A factor of two in speed is a good prediction.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'filmTooThick',
        seen: (bounds.fullFilmFrom * roughness) / law.pair.radius,
        limit: thickestFilm,
        say: (seen, limit) =>
          `A full film would be ${seen} of the radius, over ${limit}: no law of thin films reaches so far.`,
      }),
    ),
  }
}
