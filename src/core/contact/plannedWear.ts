import { doubtAbove, doubtsFound, type Explained, type Metre, type Newton } from '../terms/index.ts'
import { wornVolume } from './archard.ts'
import { capDepthOfVolume, scarDiameterOfDepth } from './ballScar.ts'
import { mustBePositive } from './refuse.ts'

/** What slides, how hard and how far. */
export interface PlannedSliding {
  /** m³/(N·m) of the body in question. */
  readonly specificRate: number
  /** On one contact. */
  readonly load: Newton
  readonly distance: Metre
}

/** What a body will lose. */
export interface PlannedWear extends Explained {
  /** m³ */
  readonly volume: number
  readonly depth: Metre
  /** Of the flat on a ball; null for a face that was flat before. */
  readonly scarDiameter: Metre | null
}

const explained = {
  law: 'Archard',
  source: 'Archard 1953, J. Appl. Phys. 24:981; cap after ASTM G99, §9 (both from memory)',
  valid:
    'Wear in proportion to load and distance, after running-in and without change of mechanism. Rates from elsewhere are ' +
    'good to a factor of ten at best; measure your own.',
}

/** Cap that a ball or dome loses over the planned distance. Throws RangeError where more than half a ball would go. */
export function plannedBallWear(
  sliding: PlannedSliding,
  ball: { readonly radius: Metre; readonly contactRadius: Metre },
): PlannedWear {
  mustBePositive(ball.contactRadius, 'contact radius', 'm')
  const volume = wornVolume(sliding.specificRate, sliding.load, sliding.distance)
  const depth = capDepthOfVolume(volume, ball.radius)
  const scarDiameter = scarDiameterOfDepth(depth, ball.radius)
  return {
    volume,
    depth,
    scarDiameter,
    ...explained,
    doubts: doubtsFound(
      doubtAbove({
        kind: 'wornFlat',
        seen: scarDiameter / (2 * ball.contactRadius),
        limit: 1,
        say: (seen) =>
          `At the end the scar will be ${seen} times as wide as the elastic contact: the pressure falls with its square ` +
          'while the curve is being drawn. Shorten the path or change the ball.',
      }),
      doubtAbove({
        kind: 'deepScar',
        seen: scarDiameter / (2 * ball.radius),
        limit: 0.3,
        say: (seen) => `The scar will be ${seen} of the ball's diameter: the ball no longer has a round end.`,
      }),
    ),
  }
}

/** Layer that a flat face of `area` m² loses evenly; for the lower body take the area of the whole track. */
export function plannedFlatWear(sliding: PlannedSliding, area: number): PlannedWear {
  mustBePositive(area, 'area', 'm²')
  const volume = wornVolume(sliding.specificRate, sliding.load, sliding.distance)
  return { volume, depth: volume / area, scarDiameter: null, ...explained, doubts: [] }
}
