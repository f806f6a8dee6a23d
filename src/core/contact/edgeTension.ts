import { doubtAbove, doubtsFound, type Explained, type Newton, type Pascal, type Ratio } from '../terms/index.ts'
import { hertzPeakPressure } from './hertz.ts'
import { mustBePoissonRatio, mustBePositive, mustNotBeNegative } from './refuse.ts'
import type { SphereOnFlat } from './sphereOnFlat.ts'

/** Largest tension at a surface, radial and at the edge of the contact: (1 − 2ν)p₀/3. Johnson 1985, §3.4. */
export function edgeTension(peakPressure: Pascal, poissonRatio: Ratio): Pascal {
  mustNotBeNegative(peakPressure, 'peak pressure', 'Pa')
  mustBePoissonRatio(poissonRatio)
  return ((1 - 2 * poissonRatio) * peakPressure) / 3
}

/** A body that cracks before it yields. */
export interface BrittleBody {
  readonly name: string
  /** In bending, as tables give it. */
  readonly strength: Pascal
  readonly poissonRatio: Ratio
}

/** Tension at the edge of the contact. */
export interface EdgeTension extends Explained {
  readonly tension: Pascal
  /** Of the strength in bending. */
  readonly share: Ratio
}

/** Tension at the edge of the contact against what a brittle body bears in bending. */
export function edgeTensionOf(load: Newton, sphere: SphereOnFlat, body: BrittleBody): EdgeTension {
  mustBePositive(body.strength, 'strength', 'Pa')
  const peakPressure = hertzPeakPressure(load, sphere.radius, sphere.effectiveModulus)
  const tension = edgeTension(peakPressure, body.poissonRatio)
  const share = tension / body.strength
  return {
    tension,
    share,
    law: 'tension at the edge of a Hertzian contact',
    source: 'Johnson 1985, Contact Mechanics, §3.4 (from memory)',
    valid:
      'Elastic, frictionless; sliding adds tension behind the contact. Strength in bending is that of a large area with its ' +
      'flaws: a small contact may bear several times as much, a scratch much less.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'cracks',
        seen: share,
        limit: 1,
        say: (seen) => `The tension at the edge is ${seen} times the strength of ${body.name}: it may crack in a ring.`,
      }),
    ),
  }
}
