import { entrainmentInPureSliding, filmNumbers, inletState, lnMinimumFilm, softShearFriction } from '../film/index.ts'
import type { MetrePerSecond, Newton, PascalSecond, Ratio } from '../terms/index.ts'
import type { FrictionModel } from './predictedFriction.ts'

/** Friction before the test, with the band within which it should lie. */
export interface PredictedFriction {
  readonly value: Ratio
  readonly low: Ratio
  readonly high: Ratio
  /** null where no film can be predicted. */
  readonly lambda: { readonly value: Ratio; readonly low: Ratio; readonly high: Ratio } | null
  /** Shear rate where the film is drawn in and the viscosity there; null for a liquid of one viscosity. */
  readonly inlet: { readonly shearRate: number; readonly viscosity: PascalSecond } | null
}

/** Friction of a model at one speed and normal load on one contact. The window works the same out for whole planes. */
export function frictionAt({ expected, film }: FrictionModel, speed: MetrePerSecond, load: Newton): PredictedFriction {
  const { boundary, boundarySpread, filmSpread } = expected
  if (film === null) {
    return {
      value: boundary,
      low: boundary / boundarySpread,
      high: boundary * boundarySpread,
      lambda: null,
      inlet: null,
    }
  }
  const entrainmentSpeed = entrainmentInPureSliding(speed)
  const inlet = film.thinning === null ? null : inletState(film.thinning, Math.log(entrainmentSpeed), Math.log(load))
  const thickness = inlet?.film ?? Math.exp(lnMinimumFilm(film.law, Math.log(entrainmentSpeed), Math.log(load)))
  const lambda = thickness / film.roughness
  const viscosity = inlet?.slidingViscosity ?? film.pair.viscosity
  const full = film.soft
    ? softShearFriction(filmNumbers({ ...film.pair, viscosity, entrainmentSpeed, load }))
    : expected.film
  const square = (lambda / film.middle) ** 2
  const wide = film.spread ** 2
  const value = blend(square, boundary, full)
  const lows = [square * wide, square / wide].map((x) => blend(x, boundary / boundarySpread, full / filmSpread))
  const highs = [square * wide, square / wide].map((x) => blend(x, boundary * boundarySpread, full * filmSpread))
  return {
    value,
    low: Math.min(...lows),
    high: Math.max(...highs),
    lambda: { value: lambda, low: lambda / film.spread, high: lambda * film.spread },
    inlet: inlet === null ? null : { shearRate: inlet.shearRate, viscosity: inlet.viscosity },
  }
}

/** Boundary friction with the share 1/(1 + square), the film's with the rest. */
const blend = (square: number, boundary: Ratio, film: Ratio): Ratio => film + (boundary - film) / (1 + square)
