import type { CoatingFailure } from './coatingFailure.ts'
import type { GapRunOut } from './gapRunOut.ts'
import type { Hunting } from './hunting.ts'
import type { LiquidChange } from './liquidChange.ts'
import type { LostContact } from './lostContact.ts'
import type { PlateTilt } from './plateTilt.ts'
import type { RunningIn } from './runningIn.ts'
import type { StickSlip } from './stickSlip.ts'
import type { ThermalDrift } from './thermalDrift.ts'
import type { TurnRipple } from './turnRipple.ts'
import type { Wear } from './wear.ts'
import type { WornSpot } from './wornSpot.ts'

/** What goes wrong or changes while a record is made. Undefined means that it does not. */
export interface Disturbances {
  /** Turn-locked shares of friction and of axial force. */
  readonly frictionRipple?: readonly TurnRipple[]
  readonly forceRipple?: readonly TurnRipple[]
  readonly tilt?: PlateTilt
  readonly gapRunOut?: GapRunOut
  readonly stickSlip?: StickSlip
  /** The speed control swings by itself. */
  readonly hunting?: Hunting
  readonly lostContact?: readonly LostContact[]
  readonly wear?: Wear
  readonly wornSpot?: WornSpot
  readonly thermalDrift?: ThermalDrift
  readonly runningIn?: RunningIn
  readonly coatingFailure?: CoatingFailure
  readonly liquidChange?: LiquidChange
}
