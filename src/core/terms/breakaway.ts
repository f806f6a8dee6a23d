import type { Bounded } from './bounded.ts'
import type { SharedSource } from './measured.ts'
import type { Remark } from './remark.ts'
import type { Metre, Newton, NewtonMetre, NewtonMetrePerRadian, Radian, Ratio, Second } from './si.ts'

/**
 * What the peak of a start is. `staticFriction`: the contact held up to it and then gave way. `windUp`: torque only rose to
 * its level as the shaft wound up. `inertia`: the peak is what it takes to speed the shaft up. `noPeak`: torque never stood
 * over its level. `cannotTell`: the record lacks what would tell.
 */
export const peakCauses = ['staticFriction', 'windUp', 'inertia', 'noPeak', 'cannotTell'] as const

/** Name of one of them. */
export type PeakCause = (typeof peakCauses)[number]

/** One thing that the record says for or against a cause. */
export interface PeakEvidence {
  readonly cause: PeakCause
  readonly speaks: 'for' | 'against' | 'silent'
  readonly sentence: string
}

/** One torque ramp from rest, or one start at an imposed speed. SI; intervals are 95 % and own part alone. */
export interface Start {
  readonly step: number
  readonly kind: 'torqueRamp' | 'imposedSpeed'
  /** Time at rest under load before the torque began to rise. */
  readonly dwell: Second
  /** N·m/s at the beginning. */
  readonly torqueRate: number
  readonly axialForce: Newton
  /** Whether the contact broke away. */
  readonly moved: boolean
  /** Friction at the first sustained motion; null where there was none. */
  readonly staticFriction: Bounded | null
  readonly ownUncertainty: Ratio | null
  readonly shared: Readonly<Partial<Record<SharedSource, number>>>
  /** Largest friction that was held without motion: a lower bound of static friction. */
  readonly held: Ratio
  readonly at: { readonly time: Second; readonly torque: NewtonMetre; readonly angle: Radian } | null
  /** Torque per angle before motion: rig and contact together, at the beginning of the ramp. */
  readonly stiffness: Bounded | null
  /** Angle before motion by cause: elastic twist, creep, and the noise of the encoder (standard deviation). */
  readonly elastic: Radian
  readonly creep: Radian
  readonly angleNoise: Radian
  /** Sliding that has to be exceeded before it counts as motion. */
  readonly motionThreshold: Radian
  readonly kinetic: Ratio | null
  readonly peak: { readonly cause: PeakCause; readonly sentence: string; readonly evidence: readonly PeakEvidence[] }
  readonly remarks: readonly Remark[]
  /** For pictures: at most some hundred rows. */
  readonly trace: readonly { readonly time: Second; readonly torque: NewtonMetre; readonly angle: Radian }[]
}

/** Static friction against time at rest: µ_s = µ₀ + β·ln(1 + t/τ). */
export interface Ageing {
  readonly level: Bounded
  /** Per e-fold of the dwell. */
  readonly slope: Bounded
  readonly time: Bounded
  /** Scatter between starts beyond their own uncertainty. */
  readonly scatter: Ratio
  readonly starts: number
  /** Whether static friction grows with the dwell at all. */
  readonly grows: 'yes' | 'no' | 'cannotTell'
  readonly sentence: string
}

/** All starts of a record, and how static friction ages. */
export interface Breakaway {
  readonly starts: readonly Start[]
  readonly ageing: Ageing | null
  /** Why there is no ageing law, where there is none. */
  readonly ageingMissing: string | null
  readonly lever: Metre
  readonly stiffness: { readonly given: NewtonMetrePerRadian | null; readonly seen: NewtonMetrePerRadian | null }
  readonly remarks: readonly Remark[]
}
