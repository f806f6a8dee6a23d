export { type BreakawayOptions, breakawayDefaults, breakawayOf, sharedTogether } from './breakaway/breakawayOf.ts'
export { assumedTilt, reduceDefaults } from './defaults.ts'
export { type HoldOptions, holdDefaults, holdOf } from './hold/holdOf.ts'
export { recordStretches } from './recordStretches.ts'
export {
  type RecordTurnMap,
  type ReducedChannels,
  recordTurnMap,
  type TurnQuantity,
  turnQuantities,
} from './recordTurnMap.ts'
export { reduceRecord } from './reduceRecord.ts'
export { partialTurnShare } from './remarks/underOneTurn.ts'
export { type CriticalSpeedBracket, criticalSpeedBracket } from './stickSlip/criticalSpeed.ts'
export { type RecordStickSlip, recordStickSlip } from './stickSlip/recordStickSlip.ts'
export { type StepVibration, type VibrationVerdict, vibrationVerdicts } from './stickSlip/stepVibration.ts'
export { vibrationWords } from './stickSlip/stickSlipWords.ts'
export type { VibrationNumbers } from './stickSlip/vibrationNumbers.ts'
export { type TurnMap, type TurnMapOptions, turnMap, turnMapDefaults } from './turnMap.ts'
