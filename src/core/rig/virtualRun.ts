import type { ChannelName, FixtureSpec, Kelvin, Metre, Newton, Second } from '../terms/index.ts'
import type { Conditions } from './conditions.ts'
import type { Disturbances } from './disturbances.ts'
import type { FrictionLaw } from './frictionLaw.ts'
import type { SpeedPlan } from './speedPlan.ts'
import type { VirtualRig } from './virtualRig.ts'

/** How long a step lasts: a time, or a number of turns within bounds of time. */
export type Dwell =
  | { readonly kind: 'time'; readonly seconds: Second }
  | { readonly kind: 'turns'; readonly turns: number; readonly least: Second; readonly most: Second }

/** What is asked of the rig, in order: a blank, the sliding, another blank. */
export interface RunSheet {
  readonly speeds: SpeedPlan
  /** Not used by a ramp, which states its own duration. */
  readonly dwell: Dwell
  /** Samples per second. */
  readonly samplingRate: number
  readonly axialForce: Newton
  readonly temperature: Kelvin
  /** Gap reading at first contact. */
  readonly gap: Metre
  /** The same speeds with the fixture lifted off, without contact. */
  readonly blankBefore: boolean
  readonly blankAfter: boolean
  /** How far the fixture is lifted for a blank. */
  readonly lift: Metre
}

/** All that one record follows from, but for the seed. */
export interface VirtualRun {
  readonly fixture: FixtureSpec
  readonly rig: VirtualRig
  readonly sheet: RunSheet
  readonly friction: FrictionLaw
  /** How load and temperature change that; undefined where they do not. */
  readonly conditions?: Conditions
  readonly disturbances: Disturbances
  /** Columns of the record, in their order. */
  readonly columns: readonly ChannelName[]
}

/** Columns of a record for which nobody named others. */
export const usualColumns: readonly ChannelName[] = [
  'step',
  'time',
  'angularVelocity',
  'torque',
  'axialForce',
  'gap',
  'temperature',
  'angle',
]
