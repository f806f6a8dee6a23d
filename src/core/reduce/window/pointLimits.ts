import type { Point, ReduceOptions, Setup, WindowLimitName } from '../../terms/index.ts'
import { windUpLimit } from '../pointRemarks.ts'
import { inertiaShare } from '../remarks/rampInertia.ts'
import { partialTurnShare } from '../remarks/underOneTurn.ts'
import { windUpShare } from '../remarks/windUp.ts'
import type { ZeroCorrections } from '../zero/corrections.ts'

/** One limit at one point: a point is believed where `seen` is at most `limit`. */
export interface LimitAt {
  readonly name: WindowLimitName
  readonly seen: number
  readonly limit: number
  readonly unit: string
}

/** What the limits of a point are worked out from. */
export interface LimitContext {
  readonly setup: Setup
  readonly options: ReduceOptions
  readonly corrections: ZeroCorrections
  readonly lever: number
  /** Amplitude of the friction ripple as a share of friction, at each point. */
  readonly ripple: readonly number[]
  /** False where no step holds a turn and `ripple` follows from an assumed tilt. */
  readonly rippleSeen: boolean
  readonly floors: readonly number[]
  readonly accelerations: readonly number[]
}

/** Largest share of the friction torque that a drag or an inertia may be, even though it is taken off. */
const correctedShareLimit = 0.5

/** Expanded to 95 %. */
const expanded = 2

/** Every limit that can be worked out for one point; what nobody gave is left out. */
export function limitsAt(point: Point, index: number, context: LimitContext): LimitAt[] {
  const { setup, options, corrections, lever } = context
  const torque = Math.abs(point.torque)
  const angularVelocity = point.slidingSpeed / lever
  const friction = Math.abs(point.friction ?? Number.NaN)
  const limits: LimitAt[] = [
    { name: 'torqueFloor', seen: context.floors[index] / torque, limit: 1, unit: '' },
    {
      name: 'partialTurn',
      seen: point.turns >= 1 ? 0 : partialTurnShare(point.turns) * context.ripple[index],
      limit: options.biasLimit,
      unit: '',
    },
    {
      name: 'contact',
      seen: point.remarks.some(
        (r) => r.kind === 'contactLost' || r.kind === 'stickSlip' || r.kind === 'speedNotReached',
      )
        ? 1
        : 0,
      limit: 0.5,
      unit: '',
    },
  ]
  const clipped = point.remarks.some((r) => r.kind === 'torqueAtCeiling') && !point.trusted
  if (clipped || setup.rig.torque.ceiling !== undefined) {
    const share = setup.rig.torque.ceiling === undefined ? 0 : torque / setup.rig.torque.ceiling
    limits.push({ name: 'torqueCeiling', seen: clipped ? Math.max(share, 1.001) : share, limit: 1, unit: '' })
  }
  if (corrections.forceZero.from !== 'none') {
    const seen = (expanded * (point.shared.forceZero ?? 0)) / friction
    limits.push({ name: 'forceZero', seen, limit: options.biasLimit, unit: '' })
  }
  const stiffness = setup.rig.torsionalStiffness
  if (stiffness !== undefined) {
    const seen = windUpShare({ torque, angularVelocity, duration: point.duration }, stiffness)
    limits.push({ name: 'windUp', seen, limit: windUpLimit, unit: '' })
  }
  if (corrections.inertia > 0) {
    const seen = inertiaShare(
      { acceleration: context.accelerations[index], torque, step: point.step },
      corrections.inertia,
    )
    limits.push({ name: 'inertia', seen, limit: correctedShareLimit, unit: '' })
  }
  if (corrections.blank.from !== 'none') {
    const seen = Math.abs(corrections.blank.perSpeed * angularVelocity) / torque
    limits.push({ name: 'drag', seen, limit: correctedShareLimit, unit: '' })
  }
  return limits
}
