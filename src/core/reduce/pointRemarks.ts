import type { Point, Remark } from '../terms/index.ts'
import { fewestKept } from './estimate/learned.ts'
import type { StepResult } from './estimate/stepResult.ts'
import { type BarePoint, type PointContext, rippleAmplitude } from './point.ts'
import { belowTorqueFloor } from './remarks/belowTorqueFloor.ts'
import { contactLost } from './remarks/contactLost.ts'
import { forceOffTarget } from './remarks/forceOffTarget.ts'
import { gapCreep } from './remarks/gapCreep.ts'
import { notSteady } from './remarks/notSteady.ts'
import { rampInertia } from './remarks/rampInertia.ts'
import { speedNotReached } from './remarks/speedNotReached.ts'
import { stickSlip } from './remarks/stickSlip.ts'
import { temperatureOff } from './remarks/temperatureOff.ts'
import { tooFewSamples } from './remarks/tooFewSamples.ts'
import { ceilingSeen, torqueAtCeiling } from './remarks/torqueAtCeiling.ts'
import { turnRipple } from './remarks/turnRipple.ts'
import { partialTurnShare, underOneTurn } from './remarks/underOneTurn.ts'
import { windUp } from './remarks/windUp.ts'
import type { SignalSource } from './signals.ts'

/** Kinds after which a point must not carry the curve. */
const distrusted: ReadonlySet<Remark['kind']> = new Set([
  'belowTorqueFloor',
  'contactLost',
  'speedNotReached',
  'stickSlip',
  'tooFewSamples',
])

/** Share of a step that winding up the shaft may take: what the warm-up cut can be trusted to remove. */
export const windUpLimit = 1 / 3

/** Share of the friction torque that inertia may take before it is said. Common practice, no source. */
const inertiaLimit = 0.05

/** The torque under which a step's friction is not told from zero well enough, N·m. */
export function torqueFloorOf(bare: BarePoint, context: Pick<PointContext, 'geometry' | 'options' | 'setup'>): number {
  const perFriction = context.geometry.loadFactor * context.geometry.lever * bare.axialForce
  const own =
    context.options.floorFactor * perFriction * Math.hypot(bare.ownUncertainty ?? 0, bare.shared.torqueBlank ?? 0)
  return Math.max(own, context.setup.rig.torque.floor ?? 0)
}

/** The point with everything that was found on it. */
export function pointOf(bare: BarePoint, source: SignalSource, context: PointContext): Point {
  const result = context.record.steps[context.index]
  const ceiling = ceilingSeen(result.rows, context.setup.rig.torque.ceiling, { source, kept: bare.rows.kept })
  const remarks = [
    tooFewSamples({ rows: result.rows.force.length - result.from, step: bare.step }, fewestKept),
    speedRemark(result, context),
    contactLost(result.rows, {
      load: context.load,
      contactShare: context.options.contactShare,
      stepRows: bare.rows.to - bare.rows.from,
      sampleInterval: context.sampleInterval,
    }),
    torqueAtCeiling(ceiling, bare.step),
    ...frictionRemarks(bare, source, context),
    temperatureOff(bare, context.setup.run.temperature, context.options.temperatureTolerance),
    gapRemark(bare, context),
  ].filter((remark) => remark !== undefined)
  const trusted = bare.friction !== null && ceiling.keptRows === 0 && !remarks.some((r) => distrusted.has(r.kind))
  return { ...bare, direction: 1, trusted, remarks }
}

function frictionRemarks(bare: BarePoint, source: SignalSource, context: PointContext): (Remark | undefined)[] {
  const { setup, options, record, index, residual } = context
  const result = record.steps[index]
  if (bare.friction === null || result.products === undefined) return []
  const at = { step: bare.step }
  // In averages a fast line shows up at a slower frequency than its own, so rows as they came are looked at first.
  const looked = { friction: bare.friction, sampleInterval: context.sampleInterval, ...at }
  const averaged = { residual, turns: bare.turns, sampleInterval: context.sampleInterval * result.rows.block }
  const sticking = (context.tail && stickSlip({ ...looked, ...context.tail })) ?? stickSlip({ ...looked, ...averaged })
  const amplitude = rippleAmplitude(record, bare.friction)
  const acceleration = meanAcceleration(source, bare)
  const inertia = context.corrections.inertia
  return [
    belowTorqueFloor({ torque: bare.torque, ...at }, torqueFloorOf(bare, context)),
    forceOffTarget({ force: bare.axialForce, ...at }, setup.run.axialForce, options.forceTolerance),
    underOneTurn({
      ...at,
      turns: bare.turns,
      biasBound: partialTurnShare(bare.turns) * amplitude,
      tiltAssumed: result.tiltAssumed,
    }),
    turnRipple('force', { harmonics: bare.forceHarmonics, ...at }, options.forceRippleLimit),
    turnRipple('friction', { harmonics: bare.frictionHarmonics, ...at }, options.frictionRippleLimit),
    sticking,
    sticking === undefined
      ? notSteady(
          {
            residual,
            friction: bare.friction,
            autocorrelationTime: result.correlationTime,
            ...at,
          },
          options.significance,
        )
      : undefined,
    windUp(
      {
        torque: bare.torque,
        angularVelocity: bare.slidingSpeed / context.geometry.lever,
        duration: bare.duration,
        ...at,
      },
      setup.rig.torsionalStiffness,
      windUpLimit,
    ),
    rampInertia({ acceleration, torque: bare.torque, ...at }, inertia, inertiaLimit),
  ]
}

function speedRemark(result: StepResult, { options }: PointContext): Remark | undefined {
  const { speed } = result.rows
  if (speed.length < 3) return undefined
  const tail = speed.subarray(Math.max(0, speed.length - Math.max(3, speed.length >> 2)))
  const low = tail.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
  const high = tail.reduce((a, b) => Math.max(a, b), 0)
  const target = Math.abs(result.rows.step.target)
  return speedNotReached(
    // A step that stands most of the time has no speed to take a share of: its own fastest stands in.
    {
      settled: result.settled,
      step: result.rows.step.number,
      spread: high > low ? (high - low) / (target || high) : 0,
    },
    options.settleTolerance,
  )
}

function gapRemark(bare: BarePoint, context: PointContext): Remark | undefined {
  const trend = context.gapTrends[context.index]
  if (trend === undefined) return undefined
  const runOut = bare.turns >= 1 ? 0 : context.gapRunOut
  return gapCreep({ ...trend, runOut, step: bare.step }, context.options.gapCreepLimit)
}

/** Mean angular acceleration over the kept rows, rad/s². */
export function meanAcceleration(source: SignalSource, { rows: { kept, to } }: Pick<Point, 'rows'>): number {
  if (to - kept < 2) return 0
  const change = (signal: SignalSource['time']): number => signal(to - 1, to)[0] - signal(kept, kept + 1)[0]
  const span = change(source.time)
  return span > 0 ? change(source.speed) / span : 0
}
