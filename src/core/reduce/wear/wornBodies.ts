import { capVolume, scarDiameterOfDepth } from '../../contact/index.ts'
import type { FixtureSpec, Interval, Metre } from '../../terms/index.ts'

/** Radius of the ball or dome whose flats are read; null for flat faces. */
export function endRadiusOf(fixture: FixtureSpec): Metre | null {
  switch (fixture.kind) {
    case 'ballsOnPlate':
    case 'ballOnPlates':
    case 'ballOnBalls':
      return fixture.ballDiameter / 2
    case 'pinsOnDisc':
      return fixture.endRadius ?? null
    case 'ringOnPlate':
    case 'discOnPlate':
      return null
  }
}

/** Radius of a ring track on a level plate; null where each contact has a spot of its own or the face covers its track. */
export const trackRadiusOf = (fixture: FixtureSpec): Metre | null =>
  fixture.kind === 'ballsOnPlate' || fixture.kind === 'pinsOnDisc' ? fixture.trackRadius : null

/** A sinking of the shaft as wear of one contact, as if the upper bodies alone had worn. */
export interface SunkWear {
  /** Square to the contact. */
  readonly depth: Interval
  /** Of one contact, m³. */
  readonly volume: Interval
  /** Flat on a ball or dome; null for flat faces. */
  readonly scar: Interval | null
}

/**
 * A contact whose normal leans from the axis by α sinks by depth/cos α. A sinking below zero is no wear and counts as none.
 */
export function sunkWear(fixture: FixtureSpec, sinking: Interval): SunkWear {
  const depth = mapped(sinking, (value) => Math.max(0, value) * steepness(fixture))
  const radius = endRadiusOf(fixture)
  if (radius === null) return { depth, volume: mapped(depth, (d) => d * faceArea(fixture)), scar: null }
  const scar = mapped(depth, (d) => scarDiameterOfDepth(Math.min(radius, d), radius))
  return { depth, volume: mapped(scar, (d) => capVolume(d, radius)), scar }
}

const mapped = ({ value, low, high }: Interval, by: (value: number) => number): Interval => ({
  value: by(value),
  low: by(low),
  high: by(high),
})

/** cos α of the contact's normal. */
function steepness(fixture: FixtureSpec): number {
  if (fixture.kind === 'ballOnPlates') return Math.cos(fixture.inclination)
  return fixture.kind === 'ballOnBalls' ? Math.sqrt(2 / 3) : 1
}

/** Area of one contact of flat faces, m². */
function faceArea(fixture: FixtureSpec): number {
  switch (fixture.kind) {
    case 'pinsOnDisc':
      return (Math.PI / 4) * fixture.pinDiameter ** 2
    case 'ringOnPlate':
      return (Math.PI * (fixture.outerRadius ** 2 - fixture.innerRadius ** 2)) / fixture.segments
    case 'discOnPlate':
      return Math.PI * fixture.radius ** 2
    default:
      throw new RangeError(`fixture must have flat faces, got ${fixture.kind}`)
  }
}
