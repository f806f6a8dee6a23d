import type { Ratio } from '../terms/index.ts'
import { mustBePoissonRatio, mustNotBeNegative } from './refuse.ts'

// Published polynomials for F/F_Hertz of a rigid sphere on an elastic layer on a rigid base, in χ = √(Rδ)/h. Kept as they were
// published, also where they are off: `layerStiffening` of this room solves the problem itself and shows by how much.

/** Coefficients of χ, χ², χ³ and χ⁴. */
export type LayerSeries = readonly [number, number, number, number]

/**
 * Bonded, ν = 0.5. Dimitriadis et al. 2002, Biophys. J. 82:2798, eq. 12. Low against the exact solution by 1 % at χ = 0.2, 5 % at
 * 0.4 and 16 % at 1.
 */
export const bondedAsPublished: LayerSeries = [1.133, 1.283, 0.769, 0.0975]

/** Not bonded, ν = 0.5. The same, eq. 11 (χ³ and χ⁴ from memory). High by 1.4 % at χ = 0.1, 8 % at 0.5: not to be used as truth. */
export const unbondedAsPublished: LayerSeries = [0.884, 0.781, 0.386, 0.0048]

/** Bonded, ν = 0.5, corrected. Garcia & Garcia 2018, Biophys. J. 114:2923 (from memory). Within 0.7 % up to χ = 0.5, then high. */
export const bondedCorrected: LayerSeries = [1.133, 1.497, 1.469, 0.755]

/**
 * Bonded, any ν, by the general form of Dimitriadis et al. 2002. Its coefficient of χ is a fit: within 1 % of the exact one from
 * ν = 0.3 up, 6 % high at ν = 0. For ν = 0.5 its last coefficient comes out as −0.0975 while
 * eq. 12 prints +0.0975; nobody has settled which is meant.
 */
export function bondedOfPoisson(poissonRatio: Ratio): LayerSeries {
  mustBePoissonRatio(poissonRatio)
  const left = 1 - poissonRatio
  const alpha = -(1.2876 - 1.4678 * poissonRatio + 1.3442 * poissonRatio ** 2) / left
  const beta = (0.6387 - 1.0277 * poissonRatio + 1.5164 * poissonRatio ** 2) / left
  return [
    (-2 * alpha) / Math.PI,
    (4 * alpha ** 2) / Math.PI ** 2,
    (-8 / Math.PI ** 3) * (alpha ** 3 + (4 * Math.PI ** 2 * beta) / 15),
    ((16 * alpha) / Math.PI ** 4) * (alpha ** 3 + (3 * Math.PI ** 2 * beta) / 5),
  ]
}

/** 1 + c₁χ + c₂χ² + c₃χ³ + c₄χ⁴. */
export function seriesStiffening(chi: Ratio, [first, second, third, fourth]: LayerSeries): Ratio {
  mustNotBeNegative(chi, 'χ', '')
  return 1 + chi * (first + chi * (second + chi * (third + chi * fourth)))
}
