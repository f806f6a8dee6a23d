import { studentTQuantile } from '../stats/index.ts'
import type { Point, ReduceOptions, Setup, TurnHarmonic } from '../terms/index.ts'
import { combined, sharedBudget } from './budget.ts'
import { assumedTilt } from './defaults.ts'
import type { RecordFriction } from './estimate/recordFriction.ts'
import { pooledRipple } from './estimate/recordRipple.ts'
import type { StepResult } from './estimate/stepResult.ts'
import type { RowContext } from './estimate/stepRows.ts'
import type { PooledHarmonic, StepHarmonic } from './estimate/turnRipple.ts'
import type { GapTrend } from './gapTrend.ts'
import type { UnaveragedTail } from './unaveragedTail.ts'

/** What a point is made from, and what its remarks need. */
export interface PointContext extends RowContext {
  readonly setup: Setup
  readonly options: ReduceOptions
  readonly record: RecordFriction
  /** Place of the step among the slides. */
  readonly index: number
  /** Residual of the step's fit in friction units, turn ripple taken off. */
  readonly residual: Float64Array
  readonly tail: UnaveragedTail | undefined
  /** How the gap moved in each step. */
  readonly gapTrends: readonly (GapTrend | undefined)[]
  /** Largest amplitude of the gap's run-out seen in the record, m. */
  readonly gapRunOut: number
  readonly sampleInterval: number
}

/** The numbers of one point before its remarks are known. */
export type BarePoint = Omit<Point, 'remarks' | 'trusted' | 'direction'>

const coverage = 0.975

/** First row of the record that the friction of a step is made from; the end of the step where none is. */
export const keptFrom = ({ rows, from }: StepResult): number =>
  rows.begins.length > from ? rows.step.from + rows.begins[from] : rows.step.to

/** The numbers of a point from the estimate of its step. */
export function barePoint(result: StepResult, context: PointContext): BarePoint {
  const { rows, from, estimate, products } = result
  const { speed } = result
  const friction = estimate === undefined ? null : estimate.friction
  const shared =
    estimate === undefined
      ? {}
      : sharedBudget(
          {
            friction: estimate.friction,
            force: estimate.force,
            time: meanFrom(rows.time, from),
            angularVelocity: speed,
          },
          context.setup,
          { ...context, meansApart: meansApart(context.record, estimate.friction) },
        )
  const half =
    estimate === undefined
      ? 0
      : studentTQuantile(coverage, Math.max(1, estimate.degreesOfFreedom)) * estimate.uncertainty
  const [friction1, force1] = harmonicsOf(context, estimate?.friction)
  return {
    step: rows.step.number,
    slidingSpeed: speed * context.geometry.lever,
    friction,
    low: friction === null ? null : friction - half,
    high: friction === null ? null : friction + half,
    ownUncertainty: estimate?.uncertainty ?? null,
    sharedUncertainty: estimate === undefined ? null : combined(shared),
    shared,
    degreesOfFreedom: estimate?.degreesOfFreedom ?? null,
    turns: products?.turns ?? 0,
    duration: (rows.time.length - from) * rows.block * context.sampleInterval,
    torque: meanFrom(rows.tangential, from) * context.geometry.loadFactor * context.geometry.lever,
    axialForce: estimate?.force ?? meanFrom(rows.force, from),
    gap: knownMean(rows.gap, from),
    temperature: knownMean(rows.temperature, from),
    autocorrelationTime: autocorrelationTime(result, context),
    frictionHarmonics: friction1,
    forceHarmonics: force1,
    rows: { from: rows.step.from, to: rows.step.to, kept: keptFrom(result) },
  }
}

/** In samples as they came: averages have a smaller variance than those, and a shorter memory. */
function autocorrelationTime(result: StepResult, { tail, residual }: PointContext): number | null {
  if (result.estimate === undefined) return null
  if (tail === undefined) return result.correlationTime
  return result.correlationTime * result.rows.block * (meanSquare(residual) / meanSquare(tail.residual))
}

const meanSquare = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value * value, 0) / values.length

function harmonicsOf({ record, index }: PointContext, friction: number | undefined): [TurnHarmonic[], TurnHarmonic[]] {
  const { place } = record.steps[index]
  const pick = (of: 'friction' | 'force', scale: number): TurnHarmonic[] =>
    record.ripple.measured.flatMap((ripple) => {
      const harmonic: StepHarmonic | undefined = ripple[of][place]
      return harmonic === undefined ? [] : [turnHarmonic(ripple.order, harmonic, scale)]
    })
  return [pick('friction', Math.abs(friction ?? Number.NaN)), pick('force', 1)]
}

const turnHarmonic = (order: number, h: StepHarmonic, scale: number): TurnHarmonic => ({
  order,
  amplitude: Math.hypot(h.cosine, h.sine) / scale,
  phase: Math.atan2(h.sine, h.cosine),
  uncertainty: Math.sqrt((h.cosineVariance + h.sineVariance) / 2) / scale,
})

/** True where at least one step of the record holds a turn, so that its ripple was seen and not assumed. */
export const isRippleSeen = (record: RecordFriction): boolean => recordHarmonics(record).length > 0

/**
 * Amplitude of the friction ripple once a turn, as a share of this friction: what the whole record shows, or what an
 * assumed tilt would make where no step holds a turn.
 */
export function rippleAmplitude(record: RecordFriction, friction: number): number {
  const pooled = recordHarmonics(record)[0]?.friction
  if (pooled === undefined) return Math.tan(assumedTilt) / Math.abs(friction)
  const amplitude = Math.sqrt(pooled.cosine ** 2 + pooled.sine ** 2 + 2 * pooled.between)
  return record.ripple.scale === 'relative' ? amplitude : amplitude / Math.abs(friction)
}

/**
 * Half of Σ q·f·cos Δ: by so much the load-weighted mean of friction over a turn (the ratio of means) and its plain mean
 * differ, as a share of friction, where friction swings by q and the force by f.
 */
function meansApart(record: RecordFriction, friction: number): number {
  const by = record.ripple.scale === 'relative' ? 1 : 1 / Math.abs(friction)
  const sum = recordHarmonics(record).reduce(
    (total, { friction: q, force: f }) => total + by * (q.cosine * f.cosine + q.sine * f.sine),
    0,
  )
  return Math.abs(sum) / 2
}

/** Clear harmonics of the whole record. */
function recordHarmonics(record: RecordFriction): { friction: PooledHarmonic; force: PooledHarmonic }[] {
  const usable = record.steps.flatMap((step) => (step.products === undefined ? [] : [step.products]))
  return record.ripple.measured
    .filter((measured) => record.ripple.orders.includes(measured.order))
    .flatMap((measured) => {
      const friction = pooledRipple(measured, usable, { scale: record.ripple.scale })
      const force = pooledRipple({ ...measured, friction: measured.force }, usable, { scale: 'absolute' })
      return friction === undefined || force === undefined ? [] : [{ friction, force }]
    })
}

function meanFrom(values: Float64Array, from: number): number {
  let sum = 0
  for (let i = from; i < values.length; i++) sum += values[i]
  return values.length > from ? sum / (values.length - from) : 0
}

/** null where nothing is known. */
function knownMean(values: Float64Array, from: number): number | null {
  let sum = 0
  let count = 0
  for (let i = from; i < values.length; i++) {
    if (Number.isNaN(values[i])) continue
    sum += values[i]
    count++
  }
  return count === 0 ? null : sum / count
}
