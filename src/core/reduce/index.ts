export { assumedTilt, reduceDefaults } from './defaults.ts'
export { recordStretches } from './recordStretches.ts'
export { changeInWords, type RecordTurnDifference, recordTurnDifference } from './recordTurnDifference.ts'
export {
  type RecordTurnMap,
  type ReducedChannels,
  recordTurnMap,
  type TurnQuantity,
  turnQuantities,
} from './recordTurnMap.ts'
export { reduceRecord } from './reduceRecord.ts'
export { partialTurnShare } from './remarks/underOneTurn.ts'
export { type StepSeries, stepMemory, stepSeries } from './stepSeries.ts'
export { type TurnDifference, turnDifference, turnDifferenceDefaults } from './turnDifference.ts'
export { type TurnMap, type TurnMapOptions, turnMap, turnMapDefaults } from './turnMap.ts'
export type { TurnSpot } from './turnSpot.ts'
