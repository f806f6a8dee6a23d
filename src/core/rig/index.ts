export {
  type BreakawayRun,
  type SimulatedBreakaway,
  type StaticLaw,
  simulateBreakaway,
  type TrueStart,
} from './breakawayRun.ts'
export type { CoatingFailure } from './coatingFailure.ts'
export { type Conditions, conditionsFactor, gasConstant } from './conditions.ts'
export type { Disturbances } from './disturbances.ts'
export { familyLaw, familyParameters } from './familyLaw.ts'
export type { FrictionLaw } from './frictionLaw.ts'
export type { GapRunOut } from './gapRunOut.ts'
export type { Hunting } from './hunting.ts'
export type { LiquidChange } from './liquidChange.ts'
export type { LostContact } from './lostContact.ts'
export type { PlateTilt } from './plateTilt.ts'
export type { RunningIn } from './runningIn.ts'
export { type SampledLiquid, type SampledMaster, sampleMaster } from './sampleMaster.ts'
export { type SampledRun, sampleRun } from './sampleRun.ts'
export { type SampledStickSlip, sampleStickSlip } from './sampleStickSlip.ts'
export { type SampledTurnSpot, sampleTurnSpot } from './sampleTurnSpot.ts'
export { type SampledWear, sampleWear } from './sampleWear.ts'
export type { SensorNoise } from './sensorNoise.ts'
export { type SheetStep, sheetSteps } from './sheetSteps.ts'
export { type SimulatedRecord, simulateChunks, simulateRecord } from './simulateRecord.ts'
export { type SpeedDirection, type SpeedPlan, speedSpans } from './speedPlan.ts'
export type { StickSlip } from './stickSlip.ts'
export {
  criticalSpeed,
  naturalFrequency,
  type Oscillator,
  slipTime,
  stickSlipFrequency,
  stickTime,
} from './stickSlipOscillator.ts'
export type { ThermalDrift } from './thermalDrift.ts'
export { type TrueStep, type Truth, truthOf } from './truth.ts'
export type { TurnRipple } from './turnRipple.ts'
export type { ForceZero, ResidualTorque, SensedChannel, VirtualRig } from './virtualRig.ts'
export { type Dwell, type RunSheet, usualColumns, type VirtualRun } from './virtualRun.ts'
export type { Wear } from './wear.ts'
export type { WornSpot } from './wornSpot.ts'
