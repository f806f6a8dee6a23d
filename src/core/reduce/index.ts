export { type BreakawayOptions, breakawayDefaults, breakawayOf, sharedTogether } from './breakaway/breakawayOf.ts'
export { assumedTilt, reduceDefaults } from './defaults.ts'
export { type HoldOptions, holdDefaults, holdOf } from './hold/holdOf.ts'
export { type LoopOptions, loopDefaults, loopOf } from './loop/loopOf.ts'
export { type SweptRecord, sweepsRunIn } from './loop/sweepsRunIn.ts'
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
export { type CriticalSpeedBracket, criticalSpeedBracket } from './stickSlip/criticalSpeed.ts'
export { type RecordStickSlip, recordStickSlip } from './stickSlip/recordStickSlip.ts'
export { type StepVibration, type VibrationVerdict, vibrationVerdicts } from './stickSlip/stepVibration.ts'
export { vibrationWords } from './stickSlip/stickSlipWords.ts'
export type { VibrationNumbers } from './stickSlip/vibrationNumbers.ts'
export type { TurnSpot } from './turnSpot.ts'
export { type TurnDifference, turnDifference, turnDifferenceDefaults } from './turnDifference.ts'
export { type TurnMap, type TurnMapOptions, turnMap, turnMapDefaults } from './turnMap.ts'
export type { GapWear } from './wear/gapWear.ts'
export { type GrooveSection, grooveSection, undisturbed } from './wear/grooveSection.ts'
export { type MovedByWear, pressureLimit } from './wear/movedByWear.ts'
export type { PressureStep } from './wear/pressureHistory.ts'
export { type RecordWear, recordWear, type WearRate } from './wear/recordWear.ts'
export { type Scar, type ScarWear, scarWear } from './wear/scarWear.ts'
export { type TrackWear, trackWearOfSections, trackWearOfWidth } from './wear/trackWear.ts'
export { rateInWords, volumeInWords } from './wear/wearWords.ts'
export { endRadiusOf } from './wear/wornBodies.ts'
