import { type LubricationRegime, lubricationRegime } from '../film/index.ts'
import { rotationFromSpeed } from '../fixture/index.ts'
import type { Metre, MetrePerSecond, Newton, RadianPerSecond, Ratio, Second } from '../terms/index.ts'
import { frictionAt, type PredictedFriction } from './frictionAt.ts'
import { limitsIn, type PlanLimit } from './planLimit.ts'
import { contactAt } from './plannedContact.ts'
import { planWindow } from './planWindow.ts'
import { type PredictedUncertainty, pointUncertainty } from './pointUncertainty.ts'
import { frictionModel } from './predictedFriction.ts'
import type { Suggestion } from './suggestion.ts'
import { stepTime, sweepSpeeds, turnTime } from './turnBudget.ts'
import type { PlanBasis } from './windowAxes.ts'

/** One step of the sweep with what it will give. */
export interface PlannedPoint {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  readonly angularVelocity: RadianPerSecond
  /** +1 on the way up, −1 on the way down. */
  readonly direction: 1 | -1
  readonly dwell: Second
  readonly turns: number
  readonly distance: Metre
  readonly friction: PredictedFriction
  readonly uncertainty: PredictedUncertainty
  /** null where no λ can be had. */
  readonly regime: LubricationRegime | null
  /** Whether the regime stays the same over the interval of λ. */
  readonly regimeSurvives: boolean | null
  readonly broken: readonly PlanLimit[]
}

/** The steps of a suggested sweep in their order, at its load. */
export function plannedPoints(basis: PlanBasis, suggestion: Suggestion): readonly PlannedPoint[] {
  const { ask } = basis.question
  const { slowest, fastest, perDecade, axialForce } = suggestion
  const rising = sweepSpeeds({ slowest, fastest, perDecade })
  const falling = [...rising].reverse()
  const ways: readonly (readonly [readonly MetrePerSecond[], 1 | -1])[] =
    ask.direction === 'up'
      ? [[rising, 1]]
      : ask.direction === 'down'
        ? [[falling, -1]]
        : [
            [rising, 1],
            [falling, -1],
          ]
  // Limits of time and distance are those of the sweep as suggested, not as first asked for.
  const asked = { ...basis, question: { ...basis.question, ask: { ...ask, slowest, fastest, perDecade } } }
  const points: PlannedPoint[] = []
  for (const [speeds, direction] of ways) {
    for (const slidingSpeed of speeds) {
      points.push({ step: points.length + 1, direction, ...pointAt(asked, slidingSpeed, axialForce) })
    }
  }
  return points
}

function pointAt(
  basis: PlanBasis,
  slidingSpeed: MetrePerSecond,
  force: Newton,
): Omit<PlannedPoint, 'step' | 'direction'> {
  const { question, geometry, contact, noise } = basis
  const { ask, rig } = question
  const dwell = stepTime(slidingSpeed, geometry.lever, { turns: ask.turns, least: ask.leastDwell, most: ask.mostDwell })
  const turns = dwell / turnTime(slidingSpeed, geometry.lever)
  const model = frictionModel(question, contact)
  const friction = frictionAt(model, slidingSpeed, contactAt(contact, geometry, force).load)
  const cell = planWindow(basis, { speeds: Float64Array.of(slidingSpeed), forces: Float64Array.of(force) })
  const regime = (lambda: Ratio): LubricationRegime => lubricationRegime(lambda, model.film?.bounds)
  return {
    slidingSpeed,
    angularVelocity: rotationFromSpeed(geometry, slidingSpeed),
    dwell,
    turns,
    distance: dwell * slidingSpeed,
    friction,
    uncertainty: pointUncertainty({ friction: friction.value, force, dwell, turns }, { rig, geometry, noise }),
    regime: friction.lambda === null ? null : regime(friction.lambda.value),
    regimeSurvives: friction.lambda === null ? null : regime(friction.lambda.low) === regime(friction.lambda.high),
    broken: limitsIn(cell.broken[0]),
  }
}
