import {
  type Doubt,
  doubtAbove,
  doubtBelow,
  doubtsFound,
  type Explained,
  type Kelvin,
  type Metre,
  type MetrePerSecond,
  type Newton,
  type Ratio,
} from '../terms/index.ts'
import { type HeatBody, type HeatMeasure, type HeatSpread, heatFactor, pecletNumber } from './flashHeat.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'

/** A round contact that rests on one body and runs over the other. */
export interface SlidingHeat {
  readonly friction: Ratio
  readonly load: Newton
  readonly slidingSpeed: MetrePerSecond
  readonly contactRadius: Metre
  /** The body on which the contact stays in place: the ball. */
  readonly resting: HeatBody
  /** The body over which it runs: the plate. */
  readonly moving: HeatBody
  /** Of the plate's coating or of the plate, if that is thin. */
  readonly thickness?: Metre
}

/** Rise by one way of sharing the heat between the bodies. */
export interface SharedHeat {
  readonly postulate: 'Blok: both maxima are equal' | 'Jaeger: both means are equal'
  /** Above the bodies' own temperature. */
  readonly rise: Kelvin
  /** Part of the heat that the moving body takes. */
  readonly shareToMoving: Ratio
}

/** Flash temperature, by both postulates. */
export interface FlashTemperature extends Explained {
  readonly maximum: SharedHeat
  readonly mean: SharedHeat
  /** Friction power over the area of the contact, W/m². */
  readonly heatFlux: number
  readonly peclet: Ratio
}

/** Rise of the contact's temperature over that of the bodies, while the heat spreads as `spread` says. */
export function flashTemperature(heat: SlidingHeat, spread: HeatSpread = 'uniform'): FlashTemperature {
  mustNotBeNegative(heat.friction, 'friction', '')
  mustNotBeNegative(heat.load, 'load', 'N')
  mustNotBeNegative(heat.slidingSpeed, 'sliding speed', 'm/s')
  mustBePositive(heat.contactRadius, 'contact radius', 'm')
  if (heat.thickness !== undefined) mustBePositive(heat.thickness, 'thickness', 'm')
  const heatFlux = (heat.friction * heat.load * heat.slidingSpeed) / (Math.PI * heat.contactRadius ** 2)
  const shared = (measure: HeatMeasure, postulate: SharedHeat['postulate']): SharedHeat => {
    const resting = riseOf(heat.resting, 0, { heat, heatFlux, spread, measure })
    const moving = riseOf(heat.moving, heat.slidingSpeed, { heat, heatFlux, spread, measure })
    const shareToMoving = resting.perHeat / (resting.perHeat + moving.perHeat)
    return { postulate, rise: shareToMoving * moving.rise, shareToMoving }
  }
  const maximum = shared('maximum', 'Blok: both maxima are equal')
  const mean = shared('mean', 'Jaeger: both means are equal')
  return {
    maximum,
    mean,
    heatFlux,
    peclet: pecletNumber(heat.slidingSpeed, heat.contactRadius, heat.moving),
    law: 'flash temperature of a round contact, heat shared so that 1/T = 1/T₁ + 1/T₂',
    source:
      'Tian & Kennedy 1994, J. Tribol. 116:167; postulates of Blok 1937 and Jaeger 1942 (coefficients from memory, ' +
      'limits exact)',
    valid:
      'Thick, bare bodies in steady sliding; all the friction power becomes heat in one round patch. Asperities are hotter; ' +
      'the track as a whole warms on top of this when the ball comes round again.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'lawsDiffer',
        seen: Math.abs(maximum.shareToMoving - mean.shareToMoving),
        limit: 0.05,
        say: (seen) => `The two postulates differ by ${seen} in the share of heat: both rises are given.`,
      }),
      leak(heat),
    ),
  }
}

interface Rising {
  readonly heat: SlidingHeat
  readonly heatFlux: number
  readonly spread: HeatSpread
  readonly measure: HeatMeasure
}

/** Rise if all the heat went into this body, and the same per unit of q·a so that it also stands where there is none. */
function riseOf(body: HeatBody, speed: MetrePerSecond, { heat, heatFlux, spread, measure }: Rising) {
  const peclet = pecletNumber(speed, heat.contactRadius, body)
  const perHeat = heatFactor(peclet, spread, measure) / body.conductivity
  return { perHeat, rise: perHeat * heatFlux * heat.contactRadius }
}

/** Heat reaches as deep as the contact is wide, so a thin coating of another conductivity lets it through or holds it up. */
const leak = ({ contactRadius, thickness }: SlidingHeat): Doubt | undefined =>
  thickness === undefined
    ? undefined
    : doubtBelow({
        kind: 'heatLeaks',
        seen: thickness / contactRadius,
        limit: 10,
        say: (seen) =>
          `The layer is only ${seen} contact radii thick: what lies below it takes or dams part of the heat.`,
      })
