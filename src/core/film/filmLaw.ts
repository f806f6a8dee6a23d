import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Metre, MetrePerSecond, Newton } from '../terms/index.ts'
import { checkPair, type FilmPair } from './conditions.ts'
import { type FilmRegime, factorsOf, filmRegimes, loadPower, regimePowers, speedPower } from './filmRegimes.ts'

/**
 * The minimum film of one pair and liquid over a whole plane of speed and load: in each regime its logarithm is a straight line
 * in those of speed and load, and the film is the highest of the four.
 */
export interface FilmLaw {
  readonly pair: FilmPair
  /** ln h at 1 m/s and 1 N, −∞ for a regime that this liquid has not. */
  readonly rigid: number
  readonly thick: number
  readonly soft: number
  readonly hard: number
}

/** The law of a pair and liquid, to be kept while speed and load change. */
export function filmLaw(pair: FilmPair): FilmLaw {
  checkPair(pair)
  const doubled = 2 * pair.effectiveModulus
  const speed = Math.log(pair.viscosity / (doubled * pair.radius))
  const load = -Math.log(doubled * pair.radius ** 2)
  const material = Math.log(pair.pressureViscosity * doubled)
  const factors = factorsOf(pair.radiusRatio)
  const at = (regime: FilmRegime): number => {
    const { viscosity } = regimePowers[regime]
    const thickened = viscosity === 0 ? 0 : viscosity * material
    return Math.log(pair.radius) + factors[regime] + thickened + speedPower(regime) * speed + loadPower(regime) * load
  }
  return {
    pair,
    rigid: at('isoviscousRigid'),
    thick: at('piezoviscousRigid'),
    soft: at('isoviscousElastic'),
    hard: at('piezoviscousElastic'),
  }
}

const [rigidSpeed, thickSpeed, softSpeed, hardSpeed] = filmRegimes.map(speedPower)
const [rigidLoad, thickLoad, softLoad, hardLoad] = filmRegimes.map(loadPower)

/** ln of the minimum film at the logarithms of entrainment speed (m/s) and load (N). Unchecked: it stands in the innermost loop. */
export const lnMinimumFilm = (law: FilmLaw, lnEntrainmentSpeed: number, lnLoad: number): number =>
  Math.max(
    law.rigid + rigidSpeed * lnEntrainmentSpeed + rigidLoad * lnLoad,
    law.thick + thickSpeed * lnEntrainmentSpeed + thickLoad * lnLoad,
    law.soft + softSpeed * lnEntrainmentSpeed + softLoad * lnLoad,
    law.hard + hardSpeed * lnEntrainmentSpeed + hardLoad * lnLoad,
  )

/**
 * Entrainment speed at which the minimum film reaches a thickness. The film is the largest of four that all rise with speed, so
 * the least of the four speeds is the answer.
 */
export function speedOfFilm(film: Metre, load: Newton, law: FilmLaw): MetrePerSecond {
  mustNotBeNegative(film, 'film', 'm')
  mustBePositive(load, 'load', 'N')
  const wanted = Math.log(film)
  const lnLoad = Math.log(load)
  return Math.exp(
    Math.min(
      (wanted - law.rigid - rigidLoad * lnLoad) / rigidSpeed,
      (wanted - law.thick - thickLoad * lnLoad) / thickSpeed,
      (wanted - law.soft - softLoad * lnLoad) / softSpeed,
      (wanted - law.hard - hardLoad * lnLoad) / hardSpeed,
    ),
  )
}
