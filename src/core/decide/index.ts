export { type ChosenSamples, chosenSamples } from './chosenSamples.ts'
export {
  type Comparability,
  type ComparedSystem,
  comparability,
  type SystemDifference,
  type SystemWeight,
} from './comparability.ts'
export { type CompareAsk, compareSamples } from './compareSamples.ts'
export { type CompareOptions, compareDefaults } from './decideDefaults.ts'
export { askOf, type DecisionPaper, decisionFrom, plainDecision, usualDifference } from './decisionPaper.ts'
export { type HeldNumber, type HeldSetting, heldNumbers } from './heldNumbers.ts'
export {
  type LimitAnswer,
  type LimitAsk,
  type LimitAtSpeed,
  limitInWords,
  limitOverSpeed,
  ruleInWords,
} from './limitOverSpeed.ts'
export { marginAsked } from './marginAsked.ts'
export type { Replicate, ReplicateBlocks, ReplicatePoint } from './replicate.ts'
export { type CurveOverSpeed, curveThrough } from './replicateCurve.ts'
export { type HistoryAsk, type HistoryDesign, type ScatterHistory, scatterHistory } from './scatterHistory.ts'
export { speedGrid } from './speedGrid.ts'
export { spokenShare, spokenShares, spokenSpan, spokenSpeed } from './speedWords.ts'
export {
  fewestWatched,
  type WatchAlarm,
  type WatchedSeries,
  type WatchedValue,
  type WatchSetup,
  watchedSeries,
} from './watchedSeries.ts'
