import type { Metre, MetrePerSecond, Ratio } from '../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'

/** How heat is spread over the round contact: evenly, or as Hertz' pressure is. */
export type HeatSpread = 'uniform' | 'parabolic'

/** What of the temperature rise is asked for. */
export type HeatMeasure = 'maximum' | 'mean'

/** How a body takes up heat. */
export interface HeatBody {
  /** W/(m·K) */
  readonly conductivity: number
  /** kg/m³ */
  readonly density: number
  /** J/(kg·K) */
  readonly heatCapacity: number
}

/** κ = K/(ρc), m²/s. */
export function diffusivity({ conductivity, density, heatCapacity }: HeatBody): number {
  mustBePositive(conductivity, 'conductivity', 'W/(m·K)')
  mustBePositive(density, 'density', 'kg/m³')
  mustBePositive(heatCapacity, 'heat capacity', 'J/(kg·K)')
  return conductivity / (density * heatCapacity)
}

/** Pe = va/(2κ). Some texts leave out the 2; the coefficients below want it. */
export function pecletNumber(speed: MetrePerSecond, contactRadius: Metre, body: HeatBody): Ratio {
  mustNotBeNegative(speed, 'speed', 'm/s')
  mustBePositive(contactRadius, 'contact radius', 'm')
  return (speed * contactRadius) / (2 * diffusivity(body))
}

/**
 * Temperature rise of a round source on a half-space as a multiple of q·a/K, where q is the heat over the area of the contact:
 * C/√(π(B + Pe)). Tian & Kennedy 1994, J. Tribol. 116:167 (coefficients from memory; at rest within 3 parts in 10,000 of
 * the exact 1, 8/3π, 3π/8 and 9π/32).
 */
export function heatFactor(peclet: Ratio, spread: HeatSpread, measure: HeatMeasure): Ratio {
  mustNotBeNegative(peclet, 'Peclet number', '')
  const { factor, offset } = coefficients[spread][measure]
  return factor / Math.sqrt(Math.PI * (offset + peclet))
}

const coefficients = {
  uniform: { maximum: { factor: 2, offset: 1.273 }, mean: { factor: 1.22, offset: 0.6575 } },
  parabolic: { maximum: { factor: 2.32, offset: 1.234 }, mean: { factor: 1.464, offset: 0.874 } },
} as const
