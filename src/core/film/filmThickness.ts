import type { Metre } from '../terms/index.ts'
import { checkConditions, type FilmConditions } from './conditions.ts'
import { type FilmRegime, factorsOf, regimePowers } from './filmRegimes.ts'

// For inner loops: three logarithms and one exponential, and no object is made for a round contact. `explainFilm` says beside them
// what to doubt; `filmLaw` is for whole planes of speed and load. Above `thickestFilm`·radius the numbers mean nothing.

/** Film over radius up to which a law may be believed; beyond it, at very small loads, films of rigid bodies outgrow them. */
export const thickestFilm = 1e-2

const { piezoviscousRigid: thick, isoviscousElastic: soft, piezoviscousElastic: hard } = regimePowers

/** Minimum film in the regime that has the largest; no jump where regimes meet. 0 at rest. */
export function minimumFilm(conditions: FilmConditions): Metre {
  checkConditions(conditions)
  if (conditions.entrainmentSpeed === 0) return 0
  const speed = lnSpeedNumber(conditions)
  const load = lnLoadNumber(conditions)
  const viscosity = lnMaterialNumber(conditions) + 3 * load - 2 * speed
  const elasticity = (8 / 3) * load - 2 * speed
  const factors = factorsOf(conditions.radiusRatio)
  const film = Math.max(
    factors.isoviscousRigid,
    factors.piezoviscousRigid + thick.viscosity * viscosity,
    factors.isoviscousElastic + soft.elasticity * elasticity,
    factors.piezoviscousElastic + hard.viscosity * viscosity + hard.elasticity * elasticity,
  )
  return conditions.radius * Math.exp(film + 2 * (speed - load))
}

/** The regime that `minimumFilm` found; at rest the one towards which it goes. */
export function filmRegime(conditions: FilmConditions): FilmRegime {
  checkConditions(conditions)
  const speed = conditions.entrainmentSpeed === 0 ? slowest : lnSpeedNumber(conditions)
  const load = lnLoadNumber(conditions)
  const viscosity = lnMaterialNumber(conditions) + 3 * load - 2 * speed
  const elasticity = (8 / 3) * load - 2 * speed
  const factors = factorsOf(conditions.radiusRatio)
  const byThick = factors.piezoviscousRigid + thick.viscosity * viscosity
  const bySoft = factors.isoviscousElastic + soft.elasticity * elasticity
  const byHard = factors.piezoviscousElastic + hard.viscosity * viscosity + hard.elasticity * elasticity
  const most = Math.max(factors.isoviscousRigid, byThick, bySoft, byHard)
  if (most === byHard) return 'piezoviscousElastic'
  if (most === bySoft) return 'isoviscousElastic'
  return most === byThick ? 'piezoviscousRigid' : 'isoviscousRigid'
}

/** Film in the middle of the contact, by the regime of the minimum film. Jumps where regimes meet, as their central forms do. */
export function centralFilm(conditions: FilmConditions): Metre {
  const regime = filmRegime(conditions)
  if (conditions.entrainmentSpeed === 0) return 0
  if (regime === 'isoviscousRigid' || regime === 'piezoviscousRigid') return minimumFilm(conditions)
  const speed = lnSpeedNumber(conditions)
  const load = lnLoadNumber(conditions)
  const elasticity = (8 / 3) * load - 2 * speed
  const factors = factorsOf(conditions.radiusRatio)
  const film =
    regime === 'isoviscousElastic'
      ? factors.centralIsoviscousElastic + soft.elasticity * elasticity
      : factors.centralPiezoviscousElastic +
        0.53 * (lnMaterialNumber(conditions) + 3 * load - 2 * speed) +
        0.13 * elasticity
  return conditions.radius * Math.exp(film + 2 * (speed - load))
}

/** Logarithm of a speed number slower than any rig; far slower still, rounded exponents would let the soft regime win by themselves. */
const slowest = -50

const lnSpeedNumber = ({ viscosity, entrainmentSpeed, effectiveModulus, radius }: FilmConditions): number =>
  Math.log((viscosity * entrainmentSpeed) / (2 * effectiveModulus * radius))

const lnLoadNumber = ({ load, effectiveModulus, radius }: FilmConditions): number =>
  Math.log(load / (2 * effectiveModulus * radius * radius))

const lnMaterialNumber = ({ pressureViscosity, effectiveModulus }: FilmConditions): number =>
  Math.log(2 * pressureViscosity * effectiveModulus)
