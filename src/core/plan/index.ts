export { type JudgedContact, judgedContact } from './contactJudged.ts'
export { type Decision, decision } from './decision.ts'
export { askDefaults, assumedTilt, decidingDefaults, expectedDefaults, noiseOf } from './defaults.ts'
export {
  type EquivalenceQuestion,
  type EquivalenceTest,
  equivalencePower,
  replicatesForEquivalence,
} from './equivalence.ts'
export { type FilledQuestion, fillFromTables, fillPair, type OwnThings } from './fillFromTables.ts'
export { type FlashAtFastest, flashAtFastest } from './flashAtFastest.ts'
export { frictionAt, type PredictedFriction } from './frictionAt.ts'
export { type FrictionLimits, frictionLimits } from './frictionLimits.ts'
export {
  type FailedAssumption,
  type HeldAgainstPlan,
  type HeldPoint,
  heldAgainstPlan,
  type PlanAssumption,
  planAssumptions,
} from './heldAgainstPlan.ts'
export { judgedAnswers, strangeAnswers } from './judgedAnswers.ts'
export { type LayerBeside, layerBeside } from './layerBeside.ts'
export { type OwnPaper, ownFromPapers } from './ownFromPapers.ts'
export { planBasis } from './planBasis.ts'
export { hardestLimit, limitsIn, type PlanLimit, planLimits, planLimitWords } from './planLimit.ts'
export { type ContactAtLoad, contactAt, type PlannedContact, plannedContact, pressureLimits } from './plannedContact.ts'
export { type PlannedPoint, plannedPoints } from './plannedPoints.ts'
export { asProblem, type Plan, planOf } from './planOf.ts'
export { spokenTime } from './planSentences.ts'
export { logAxis, measurableRun, measurableShare, type PlanWindow, planWindow, type WindowAxes } from './planWindow.ts'
export { type PredictedUncertainty, pointUncertainty } from './pointUncertainty.ts'
export { type FilmModel, type FrictionModel, frictionModel } from './predictedFriction.ts'
export type {
  Ask,
  BodyBears,
  BodyHeat,
  Deciding,
  ExpectedFriction,
  ExpectedNoise,
  PlanQuestion,
  QuestionFlow,
} from './question.ts'
export { type AskKind, askKinds } from './question.ts'
export { type QuestionFault, questionFaults } from './questionFaults.ts'
export { type Reckoning, type ReckoningName, reckoningNames } from './reckoning.ts'
export { type RegimeAnswer, regimeAnswer, type SpeedInterval } from './regimeAnswer.ts'
export {
  powerOfTTest,
  type ReplicateAnswer,
  type ReplicateQuestion,
  replicatesNeeded,
  smallestDifference,
} from './replicates.ts'
export { replicatesAgainstLimit } from './replicatesAgainstLimit.ts'
export { type OrderedRun, type OrderQuestion, runOrder, usualCheckEvery } from './runOrder.ts'
export { runSheetOf } from './runSheetOf.ts'
export { differencesSeen, type StudyCost, studyCost } from './studyCost.ts'
export { compliantUnder, fewestPerDecade, roundWithin, type Suggestion, suggest } from './suggestion.ts'
export {
  partialTurnBias,
  type StepDwell,
  type Sweep,
  stepTime,
  sweepDistance,
  sweepSpeeds,
  sweepTime,
  turnTime,
} from './turnBudget.ts'
export { type TrialRun, virtualRunOfPlan } from './virtualRunOfPlan.ts'
export { type WearBudget, wearBudget } from './wearBudget.ts'
export { type ForceLine, type PlanBasis, type SpeedLine, wearDistance } from './windowAxes.ts'
