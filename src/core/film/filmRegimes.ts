import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Ratio } from '../terms/index.ts'
import { ellipticity } from './filmForms.ts'

/** What carries the load of a film: whether pressure thickens the liquid and whether it bends the bodies. */
export const filmRegimes = ['isoviscousRigid', 'piezoviscousRigid', 'isoviscousElastic', 'piezoviscousElastic'] as const

/** Name of one of the four. */
export type FilmRegime = (typeof filmRegimes)[number]

/** What decides on the regime. */
export interface RegimeNumbers {
  /** gV = GW³/U² */
  readonly viscosity: number
  /** gE = W^(8/3)/U² */
  readonly elasticity: number
}

/** Powers with which gV and gE enter the minimum film of each regime, Ĥ = C·gV^v·gE^e. */
export const regimePowers = {
  isoviscousRigid: { viscosity: 0, elasticity: 0 },
  piezoviscousRigid: { viscosity: 0.375, elasticity: 0 },
  isoviscousElastic: { viscosity: 0, elasticity: 0.67 },
  piezoviscousElastic: { viscosity: 0.49, elasticity: 0.17 },
} as const satisfies Readonly<Record<FilmRegime, { readonly viscosity: number; readonly elasticity: number }>>

/** Power of speed, and of viscosity at the inlet, in the minimum film of a regime: 2 − 2v − 2e. */
export const speedPower = (regime: FilmRegime): number =>
  2 - 2 * regimePowers[regime].viscosity - 2 * regimePowers[regime].elasticity

/** Power of load in the minimum film of a regime: 3v + (8/3)e − 2. Below zero. */
export const loadPower = (regime: FilmRegime): number =>
  3 * regimePowers[regime].viscosity + (8 / 3) * regimePowers[regime].elasticity - 2

/** Logarithms of the factors C for one shape of contact. */
export interface RegimeFactors {
  readonly isoviscousRigid: number
  readonly piezoviscousRigid: number
  readonly isoviscousElastic: number
  readonly piezoviscousElastic: number
  readonly centralIsoviscousElastic: number
  readonly centralPiezoviscousElastic: number
}

/**
 * Factors of the four regimes for Ry/Rx. Hamrock & Dowson 1979; Esfahanian & Hamrock 1991, Tribol. Trans. 34:628; Hamrock, Schmid &
 * Jacobson 2004 (from memory; they agree within 4 % with the forms of `filmForms.ts`, of which they are rounded exponents).
 */
function regimeFactors(radiusRatio: Ratio): RegimeFactors {
  mustBePositive(radiusRatio, 'radius ratio', '')
  const k = ellipticity(radiusRatio)
  const side = 1 / (1 + 2 / (3 * radiusRatio))
  return {
    isoviscousRigid: Math.log(128 * radiusRatio * side ** 2 * (0.131 * Math.atan(radiusRatio / 2) + 1.683) ** 2),
    piezoviscousRigid: Math.log(141 * (1 - Math.exp(-0.0387 * radiusRatio))),
    isoviscousElastic: Math.log(8.7 * (1 - 0.85 * Math.exp(-0.31 * k))),
    piezoviscousElastic: Math.log(3.42 * (1 - Math.exp(-0.68 * k))),
    centralIsoviscousElastic: Math.log(11.15 * (1 - 0.72 * Math.exp(-0.28 * k))),
    centralPiezoviscousElastic: Math.log(3.61 * (1 - 0.61 * Math.exp(-0.73 * k))),
  }
}

const roundFactors: RegimeFactors = regimeFactors(1)

/** The same without computing anew for a round contact. */
export const factorsOf = (radiusRatio: Ratio | undefined): RegimeFactors =>
  radiusRatio === undefined || radiusRatio === 1 ? roundFactors : regimeFactors(radiusRatio)

/** Ĥ = (h/R)(W/U)² of each regime. */
export type RegimeFilms = Readonly<Record<FilmRegime, number>>

/** Minimum films of all four; the largest is the one that is there. */
export function regimeFilms(numbers: RegimeNumbers, radiusRatio: Ratio = 1): RegimeFilms {
  const { viscosity, elasticity } = checked(numbers)
  const factors = regimeFactors(radiusRatio)
  const film = (regime: FilmRegime): number =>
    Math.exp(factors[regime]) *
    viscosity ** regimePowers[regime].viscosity *
    elasticity ** regimePowers[regime].elasticity
  return {
    isoviscousRigid: film('isoviscousRigid'),
    piezoviscousRigid: film('piezoviscousRigid'),
    isoviscousElastic: film('isoviscousElastic'),
    piezoviscousElastic: film('piezoviscousElastic'),
  }
}

/** Central films of all four; rigid bodies have their least film in the middle. Not to be used to choose a regime. */
export function centralRegimeFilms(numbers: RegimeNumbers, radiusRatio: Ratio = 1): RegimeFilms {
  const { viscosity, elasticity } = checked(numbers)
  const factors = regimeFactors(radiusRatio)
  return {
    ...regimeFilms(numbers, radiusRatio),
    isoviscousElastic: Math.exp(factors.centralIsoviscousElastic) * elasticity ** 0.67,
    piezoviscousElastic: Math.exp(factors.centralPiezoviscousElastic) * viscosity ** 0.53 * elasticity ** 0.13,
  }
}

/** The regime with the largest minimum film. */
export function largestRegime(films: RegimeFilms): FilmRegime {
  let largest: FilmRegime = 'isoviscousRigid'
  for (const regime of filmRegimes) if (films[regime] > films[largest]) largest = regime
  return largest
}

function checked(numbers: RegimeNumbers): RegimeNumbers {
  mustNotBeNegative(numbers.viscosity, 'viscosity number gV', '')
  mustNotBeNegative(numbers.elasticity, 'elasticity number gE', '')
  return numbers
}
