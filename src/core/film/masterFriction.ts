import { mustBePositive, mustNotBeNegative } from '../contact/index.ts'
import type { Ratio } from '../terms/index.ts'

/** Constants of a master curve over ηv in N/m. They belong to one pair of surfaces and have to be fitted; none are shipped. */
export interface MasterCurve {
  /** k and n of the film branch µ_F = k(ηv)ⁿ. */
  readonly filmFactor: number
  readonly filmPower: number
  /** h and l of the boundary branch µ_B = h(ηv)ˡ; l = 0 is a plateau. */
  readonly boundaryFactor: number
  readonly boundaryPower: number
  /** ηv at which friction is the mean of both branches, N/m. */
  readonly crossover: number
  /** How sharply one branch gives way to the other. */
  readonly steepness: number
}

/**
 * Friction of many liquids on one pair over ηv: µ = µ_F + (µ_B − µ_F)/(1 + (ηv/B)^m). Form after Bongaerts, Fourtouni & Stokes 2007,
 * Tribol. Int. 40:1531 (from memory). Papers write it with the entrainment speed as well; the constants go with the speed.
 */
export function masterFriction(viscositySpeed: number, curve: MasterCurve): Ratio {
  mustBePositive(viscositySpeed, 'viscosity times speed', 'N/m')
  mustNotBeNegative(curve.filmFactor, 'film factor', '')
  mustNotBeNegative(curve.boundaryFactor, 'boundary factor', '')
  mustBePositive(curve.crossover, 'crossover', 'N/m')
  mustBePositive(curve.steepness, 'steepness', '')
  if (!(Number.isFinite(curve.filmPower) && Number.isFinite(curve.boundaryPower))) {
    throw new RangeError(`powers must be finite, got ${curve.filmPower} and ${curve.boundaryPower}`)
  }
  const film = curve.filmFactor * viscositySpeed ** curve.filmPower
  const boundary = curve.boundaryFactor * viscositySpeed ** curve.boundaryPower
  return film + (boundary - film) / (1 + (viscositySpeed / curve.crossover) ** curve.steepness)
}
