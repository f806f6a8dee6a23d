import { findRoot } from '../numeric/index.ts'
import type { Metre, MetrePerSecond, Newton, PascalSecond } from '../terms/index.ts'
import { entrainmentInPureSliding, type FilmPair } from './conditions.ts'
import { type FilmLaw, filmLaw, lnMinimumFilm, speedOfFilm } from './filmLaw.ts'
import type { FlowCurve } from './thinningFilm.ts'

/** Pair and thinning liquid, to be kept while speed and load change. `filmWithThinning` explains one film of it. */
export interface ThinningLaw {
  /** At a viscosity of 1 Pa·s: films hang on viscosity times speed alone. */
  readonly unit: FilmLaw
  readonly flow: FlowCurve
}

/** What the liquid is where the film is drawn in, and within it. */
export interface InletState {
  readonly film: Metre
  /** At u/h, which makes the film. */
  readonly viscosity: PascalSecond
  /** u/h, 1/s */
  readonly shearRate: number
  /** At v/h = 2u/h, the rate at which the film itself is sheared. */
  readonly slidingViscosity: PascalSecond
}

/** Rates that a flow law is asked for; beyond, its ends stand in, so that some film always carries the load. */
const rates = { low: 1e-12, high: 1e15 } as const

/** The law of a pair and a liquid. */
export const thinningLaw = (pair: Omit<FilmPair, 'viscosity'>, flow: FlowCurve): ThinningLaw => ({
  unit: filmLaw({ ...pair, viscosity: 1 }),
  flow: (rate) => flow(Math.min(rates.high, Math.max(rates.low, rate))),
})

/** Film and viscosities in pure sliding, at the logarithms of entrainment speed (m/s) and load (N). */
export function inletState({ unit, flow }: ThinningLaw, lnEntrainmentSpeed: number, lnLoad: number): InletState {
  const speed = Math.exp(lnEntrainmentSpeed)
  const over = (lnFilm: number): number => {
    const viscosity = flow(speed / Math.exp(lnFilm))
    return lnMinimumFilm(unit, lnEntrainmentSpeed + Math.log(viscosity), lnLoad) - lnFilm
  }
  // No thinner than with the liquid at its thinnest, no thicker than with it at its thickest.
  const ends = [flow(rates.low), flow(rates.high)].map((viscosity) =>
    lnMinimumFilm(unit, lnEntrainmentSpeed + Math.log(viscosity), lnLoad),
  )
  const film = Math.exp(findRoot(over, [Math.min(...ends) - 1, Math.max(...ends) + 1], { tolerance: 1e-8 }).at)
  const shearRate = speed / film
  return { film, shearRate, viscosity: flow(shearRate), slidingViscosity: flow(2 * shearRate) }
}

/**
 * Sliding speed at which the minimum film reaches a thickness: at that film the viscosity hangs on the speed alone, and viscosity
 * times speed is known. 0 where a yield stress carries the load at rest; null where no speed reaches it.
 */
export function thinningSpeedOfFilm(film: Metre, load: Newton, { unit, flow }: ThinningLaw): MetrePerSecond | null {
  const wanted = Math.log(speedOfFilm(film, load, unit) / film)
  const lnStress = (lnRate: number): number => Math.log(flow(Math.exp(lnRate))) + lnRate - wanted
  const [low, high] = [Math.log(rates.low), Math.log(rates.high)]
  if (lnStress(low) >= 0) return 0
  if (lnStress(high) <= 0) return null
  return (Math.exp(findRoot(lnStress, [low, high], { tolerance: 1e-9 }).at) * film) / entrainmentInPureSliding(1)
}
