import type { Random } from '../numeric/index.ts'
import type { FixtureKind, FixtureSpec, PressureLaw } from '../terms/index.ts'
import { between } from './sampleNumbers.ts'

const kinds: readonly FixtureKind[] = [
  'ballsOnPlate',
  'ballOnPlates',
  'ballOnBalls',
  'ringOnPlate',
  'discOnPlate',
  'pinsOnDisc',
]

/** A fixture of any kind, all kinds alike often, in sizes that a rheometer takes; no uncertainty in its lengths. */
export function sampleFixture(random: Random): FixtureSpec {
  const kind = kinds[random.integer(kinds.length)]
  const pressure: PressureLaw = random.uniform() < 0.5 ? 'uniformPressure' : 'uniformWear'
  const ballDiameter = between(random, 4e-3, 12.7e-3)
  const trackRadius = between(random, 12e-3, 20e-3)
  switch (kind) {
    case 'ballsOnPlate':
      return { kind, balls: random.uniform() < 0.5 ? 3 : 1, ballDiameter, trackRadius, trackRadiusUncertainty: 0 }
    case 'ballOnPlates':
      return {
        kind,
        plates: 3,
        ballDiameter,
        ballDiameterUncertainty: 0,
        inclination: between(random, 0.6, 1),
        inclinationUncertainty: 0,
      }
    case 'ballOnBalls':
      return { kind, ballDiameter, ballDiameterUncertainty: 0 }
    case 'ringOnPlate': {
      const outerRadius = between(random, 10e-3, 20e-3)
      const innerRadius = outerRadius * between(random, 0.5, 0.9)
      return { kind, outerRadius, innerRadius, segments: 1 + random.integer(3), pressure, radiusUncertainty: 0 }
    }
    case 'discOnPlate':
      return { kind, radius: between(random, 10e-3, 20e-3), pressure, radiusUncertainty: 0 }
    case 'pinsOnDisc':
      return { kind, pins: 3, pinDiameter: between(random, 2e-3, 6e-3), trackRadius, trackRadiusUncertainty: 0 }
  }
}
