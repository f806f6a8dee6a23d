import {
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type Pascal,
  type Radian,
} from '../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'

/** A flat face: a ring, a disc, a flat pin, or one segment of a ring. */
export interface FlatFace {
  /** m², of one face. */
  readonly area: number
  /** Of the circle round the face. */
  readonly outerRadius: Metre
  /** E* of both bodies. */
  readonly effectiveModulus: Pascal
}

/** Flat on flat. */
export interface FlatContact extends Explained {
  readonly meanPressure: Pascal
  /** Tilt at which one edge of an elastic disc would lift off. Real faces are hardly ever this parallel. */
  readonly liftOffTilt: Radian
}

/** Load over area. Throws RangeError for an area that is not above zero. */
export function nominalPressure(load: Newton, area: number): Pascal {
  mustNotBeNegative(load, 'load', 'N')
  mustBePositive(area, 'area', 'm²')
  return load / area
}

/**
 * Tilt at which a rigid flat disc, pressed into an elastic body, lifts off at one edge: θ = F/(4E*R²). Moment and tilt of a
 * rigid punch are M = (4/3)E*R³θ and its pressure there reaches zero at M = FR/3 (Johnson 1985, §3.8 and §5.1; derived).
 */
export function liftOffTilt(load: Newton, outerRadius: Metre, modulus: Pascal): Radian {
  mustNotBeNegative(load, 'load', 'N')
  mustBePositive(outerRadius, 'outer radius', 'm')
  mustBePositive(modulus, 'effective modulus', 'Pa')
  return load / (4 * modulus * outerRadius ** 2)
}

/** Nominal pressure of flat faces and why the true one is another. */
export function flatContact(load: Newton, face: FlatFace, tilt?: Radian): FlatContact {
  const lifts = liftOffTilt(load, face.outerRadius, face.effectiveModulus)
  if (tilt !== undefined) mustNotBeNegative(tilt, 'tilt', 'rad')
  return {
    meanPressure: nominalPressure(load, face.area),
    liftOffTilt: lifts,
    law: 'nominal pressure, load over area',
    source: 'definition; edges after Johnson 1985, Contact Mechanics, §3.8 (from memory)',
    valid:
      'A mean only: at a sharp edge the elastic pressure has no bound, and faces that are not parallel touch along a line ' +
      'or at one edge until they are worn in. For a ring the tilt of lift-off is an order of magnitude.',
    doubts: doubtsFound(
      tilt === undefined || lifts === 0
        ? undefined
        : doubtAbove({
            kind: 'edgeLoaded',
            seen: tilt / lifts,
            limit: 1,
            say: (seen) =>
              `The tilt is ${seen} times that at which one edge lifts off: a line or an edge carries the load until it is ` +
              'worn in or a coupling gives way, at far more than the nominal pressure.',
          }),
    ),
  }
}
