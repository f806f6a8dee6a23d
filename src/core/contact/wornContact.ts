import {
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type Pascal,
  type Ratio,
} from '../terms/index.ts'
import { capDepth, capVolume } from './ballScar.ts'
import { hertzMeanPressure, hertzRadius } from './hertz.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'
import type { SphereOnFlat } from './sphereOnFlat.ts'

/** Mean pressure over a flat scar, 4F/(πd²). */
export function wornFlatPressure(load: Newton, scarDiameter: Metre): Pascal {
  mustNotBeNegative(load, 'load', 'N')
  mustBePositive(scarDiameter, 'scar diameter', 'm')
  return (4 * load) / (Math.PI * scarDiameter ** 2)
}

/** A ball with a flat worn onto it. */
export interface WornContact extends Explained {
  /** Which patch is the larger and carries the load. */
  readonly patch: 'elastic' | 'worn'
  /** Mean over that patch. */
  readonly meanPressure: Pascal
  /** Mean that the fresh ball had. */
  readonly freshPressure: Pascal
  /** Fresh over present: by how much the pressure has fallen. */
  readonly fall: Ratio
  readonly depth: Metre
  /** m³ */
  readonly volume: number
}

/**
 * Pressure once a scar is there: over the scar as soon as it is wider than the elastic contact. `ballRadius` is the ball's own;
 * the sphere is that of the fresh pair.
 */
export function wornContact(
  load: Newton,
  sphere: SphereOnFlat,
  scar: { readonly diameter: Metre; readonly ballRadius: Metre },
): WornContact {
  mustBePositive(load, 'load', 'N')
  const elasticDiameter = 2 * hertzRadius(load, sphere.radius, sphere.effectiveModulus)
  const freshPressure = hertzMeanPressure(load, sphere.radius, sphere.effectiveModulus)
  const worn = scar.diameter > elasticDiameter
  const meanPressure = worn ? wornFlatPressure(load, scar.diameter) : freshPressure
  return {
    patch: worn ? 'worn' : 'elastic',
    meanPressure,
    freshPressure,
    fall: freshPressure / meanPressure,
    depth: capDepth(scar.diameter, scar.ballRadius),
    volume: capVolume(scar.diameter, scar.ballRadius),
    law: 'mean pressure over the larger of worn flat and elastic contact',
    source: 'definition; cap after ASTM G99, §9 (from memory)',
    valid:
      'A flat scar square to the load. A rounded or slanted scar makes the cap formula wrong; one profile through it tells. ' +
      'At the edge of the flat the pressure is higher than the mean.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'wornFlat',
        seen: scar.diameter / elasticDiameter,
        limit: 1,
        say: (seen) =>
          `The scar is ${seen} times as wide as the elastic contact: laws of a sphere, of its film and of its pressure no longer hold.`,
      }),
    ),
  }
}
