import type { FixtureGeometry } from '../fixture/index.ts'
import { done, failed, type Metre, type Outcome, type Problem, type Second } from '../terms/index.ts'
import { type JudgedContact, judgedContact } from './contactJudged.ts'
import { type Decision, decision } from './decision.ts'
import { errorWords } from './errorWords.ts'
import { type FlashAtFastest, flashAtFastest } from './flashAtFastest.ts'
import { type LayerBeside, layerBeside } from './layerBeside.ts'
import { planBasis } from './planBasis.ts'
import { type PlannedPoint, plannedPoints } from './plannedPoints.ts'
import { believableWords, tradeWords, turnBudgetWords } from './planSentences.ts'
import { frictionModel } from './predictedFriction.ts'
import type { ExpectedNoise, PlanQuestion } from './question.ts'
import { type QuestionFault, questionFaults } from './questionFaults.ts'
import type { Reckoning } from './reckoning.ts'
import { reckonings } from './reckonings.ts'
import { type RegimeAnswer, regimeAnswer } from './regimeAnswer.ts'
import { type Suggestion, suggest } from './suggestion.ts'
import { type WearBudget, wearBudget } from './wearBudget.ts'

/** A whole plan: what would be done, what it will show, and what was traded away. SI throughout, no NaN anywhere. */
export interface Plan {
  readonly question: PlanQuestion
  readonly geometry: FixtureGeometry
  readonly noise: ExpectedNoise
  readonly suggestion: Suggestion
  readonly contact: JudgedContact
  /** A soft layer by its own law; null where the lower body is none. */
  readonly layer: LayerBeside | null
  /** null where the table does not know how both bodies take up heat. */
  readonly flash: FlashAtFastest | null
  readonly points: readonly PlannedPoint[]
  /** Of all steps of one record, conditioning included in the distance alone. */
  readonly totals: { readonly time: Second; readonly distance: Metre }
  readonly wear: WearBudget
  readonly regime: RegimeAnswer
  /** Each kind of number with its law, where that holds, and what to doubt. */
  readonly reckonings: readonly Reckoning[]
  readonly decision: Decision
  readonly sentences: {
    readonly believable: string
    readonly trades: readonly string[]
    readonly turnBudget: readonly string[]
    /** What usual errors would do here. */
    readonly errors: readonly string[]
    /** What nobody said, and so what is not judged. */
    readonly notJudged: readonly string[]
  }
  readonly warnings: readonly QuestionFault[]
}

/** The plan of a question, or all that is impossible about it. */
export function planOf(question: PlanQuestion): Outcome<Plan> {
  const faults = questionFaults(question)
  const impossible = faults.filter(({ weight }) => weight === 'stops')
  if (impossible.length > 0) return failed(...impossible.map(asProblem))
  const basis = planBasis(question)
  const suggestion = suggest(question)
  const points = plannedPoints(basis, suggestion)
  const contact = judgedContact(basis, suggestion.axialForce)
  const distance = points.reduce((sum, point) => sum + point.distance, question.ask.conditioningDistance)
  const wear = wearBudget(basis, suggestion.axialForce, distance)
  const layer = layerBeside(basis, suggestion.axialForce)
  const flash = flashAtFastest(basis, suggestion, points)
  const model = frictionModel(question, basis.contact)
  const regime = regimeAnswer(model, { flow: question.flow, load: contact.load, points })
  return done({
    question,
    geometry: basis.geometry,
    noise: basis.noise,
    suggestion,
    contact,
    layer,
    flash,
    points,
    totals: { time: points.reduce((sum, point) => sum + point.dwell, 0), distance },
    wear,
    regime,
    reckonings: reckonings(basis, { contact, layer, flash, points, regime, distance }),
    decision: decision(question, wear),
    sentences: {
      believable: believableWords(suggestion),
      trades: tradeWords(suggestion, basis),
      turnBudget: turnBudgetWords(basis),
      errors: errorWords(basis, { contact, force: suggestion.axialForce, points }),
      notJudged: notJudged(question),
    },
    warnings: faults,
  })
}

/** A fault that stops a plan, as a problem of the input. */
export const asProblem = ({ key, what, mend }: QuestionFault): Problem => ({
  kind: 'questionImpossible',
  class: 'badInput',
  place: { name: key },
  what,
  mend,
})

function notJudged({ rig, bears, pair, liquid, ask, fixture, pressureViscosity }: PlanQuestion): readonly string[] {
  const lone = 'balls' in fixture ? fixture.balls === 1 : fixture.kind === 'pinsOnDisc' && fixture.pins === 1
  const missing: readonly (readonly [boolean, string])[] = [
    [rig.torque.floor === undefined, 'torque floor: smallest friction and noise of the torque'],
    [rig.torque.ceiling === undefined, 'torque ceiling: largest friction'],
    [rig.axialForce.ceiling === undefined, 'largest axial force of the rig'],
    [
      pair.upper.elasticModulus === undefined || pair.lower.elasticModulus === undefined,
      'stiffness of both bodies: pressure, indentation, film',
    ],
    [
      bears.upper.yieldStrength === undefined && bears.lower.yieldStrength === undefined,
      'yield strength of the bodies: lasting dents',
    ],
    [
      bears.upper.wearRate === undefined && bears.lower.wearRate === undefined,
      'wear rates: scar, and records per ball set',
    ],
    [lone && ask.mostTiltingMoment === undefined, 'moment that the shaft bears sideways: the lone body tilts it'],
    [liquid !== undefined && liquid.viscosity === undefined, 'viscosity of the liquid: film and λ'],
    [
      liquid?.viscosity !== undefined && pressureViscosity === undefined,
      'pressure–viscosity coefficient: 0 was taken, hard bodies then have a thinner film than in truth',
    ],
  ]
  return missing.filter(([absent]) => absent).map(([, words]) => words)
}
