export {
  type EquivalenceQuestion,
  type EquivalenceTest,
  equivalencePower,
  replicatesForEquivalence,
} from './equivalence.ts'
export {
  powerOfTTest,
  type ReplicateAnswer,
  type ReplicateQuestion,
  replicatesNeeded,
  smallestDifference,
} from './replicates.ts'
export { type OrderedRun, type OrderQuestion, runOrder, usualCheckEvery } from './runOrder.ts'
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
