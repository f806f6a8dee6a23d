import { fixtureGeometry } from '../fixture/index.ts'
import type {
  Channels,
  MovedWindow,
  Outcome,
  Point,
  Problem,
  RecordRipple,
  ReduceOptions,
  Reduction,
  Setup,
} from '../terms/index.ts'
import { done, failed } from '../terms/index.ts'
import { reduceDefaults } from './defaults.ts'
import { type RecordFriction, recordFriction } from './estimate/recordFriction.ts'
import { pooledRipple } from './estimate/recordRipple.ts'
import { residualOf } from './estimate/residualOf.ts'
import { stepRows } from './estimate/stepRows.ts'
import { type GapTrend, gapTrend } from './gapTrend.ts'
import { type MovedStep, movedSteps } from './movedSteps.ts'
import { barePoint, isRippleSeen, keptFrom, type PointContext, rippleAmplitude } from './point.ts'
import { meanAcceleration, pointOf, torqueFloorOf } from './pointRemarks.ts'
import { recordRemarks } from './recordRemarks.ts'
import { segment } from './segment/segment.ts'
import { type SignalSource, signalSource } from './signals.ts'
import { unaveragedTail } from './unaveragedTail.ts'
import { believableWindow } from './window/believable.ts'
import { contactState } from './zero/contactState.ts'
import { forceZero } from './zero/forceZero.ts'
import { torqueBlank } from './zero/torqueBlank.ts'

/**
 * From the channels of a record to points with uncertainties, remarks and the window that may be believed: zeroes and
 * blank, inertia, segmentation, warm-up cut, whole turns, ratio of means with autocorrelated errors. What the record
 * lacks and the setup does not say comes back as problems. Windows that a person moved count as they are.
 */
export function reduceRecord(
  channels: Channels,
  setup: Setup,
  windows: readonly MovedWindow[] = [],
): Outcome<Reduction> {
  const missing = missingChannels(channels, setup)
  if (missing.length > 0) return failed(...missing)
  const options: ReduceOptions = { ...reduceDefaults, ...setup.options }
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const { how, stretches } = segment(channels, source, options)
  const { steps: found, load } = contactState(stretches, source, setup)
  const moved = movedIn(windows, { channels, setup, source })
  if (!moved.ok) return moved
  const steps = found.map((step) => moved.value.find(({ begin }) => begin === step.from)?.step ?? step)
  const slides = steps.filter((step) => step.kind === 'slide')
  const { blank, inertia } = torqueBlank(steps, source, setup.rig.inertia)
  const corrections = { forceZero: forceZero(steps, source), blank, inertia: inertia ?? 0 }
  const orders = [...new Set([1, 2, 3, geometry.contacts])].sort((a, b) => a - b)
  const contactShare = source.hasForce ? options.contactShare : Number.NEGATIVE_INFINITY
  const rowContext = { geometry, corrections, load, contactShare, orders }
  const rows = slides.map((step) => stepRows(step, source, rowContext))
  const record = recordFriction(rows, {
    settleTolerance: options.settleTolerance,
    orders,
    cutWarmUp: how !== 'ramp',
    asTheyAre: new Set(moved.value.map(({ step }) => step.from)),
  })
  const gapTrends = record.steps.map(gapTrend)
  const gapRunOut = largestRunOut(record, gapTrends)
  const { sampleInterval } = source
  const common = { setup, options, ...rowContext, record, sampleInterval, gapTrends, gapRunOut }
  const points = pointsOf(source, common).map((point) => withMove(point, moved.value))
  const context = {
    ...common,
    lever: geometry.lever,
    ripple: points.map((point) => rippleAmplitude(record, point.friction ?? Number.NaN)),
    rippleSeen: isRippleSeen(record),
    floors: points.map((point) => torqueFloorOf(point, common)),
    accelerations: points.map((point) => meanAcceleration(source, point)),
  }
  const wantsTurns = points.some((point) => point.turns < 1)
  return done({
    steps,
    points,
    segmentation: how,
    forceZero: corrections.forceZero,
    torqueBlank: blank,
    ripple: rippleOf(record),
    noiseCorrelation: record.noise.centre,
    sampleInterval,
    window: believableWindow(points, context),
    remarks: recordRemarks({ source, corrections, setup, options, points, load, wantsTurns }),
  })
}

/** What the program finds by itself says from where a window was moved. */
function movedIn(
  windows: readonly MovedWindow[],
  { channels, setup, source }: { channels: Channels; setup: Setup; source: SignalSource },
): Outcome<readonly MovedStep[]> {
  if (windows.length === 0) return done([])
  const own = reduceRecord(channels, setup)
  return own.ok ? movedSteps(windows, own.value, source) : own
}

function withMove(point: Point, moved: readonly MovedStep[]): Point {
  const own = moved.find(({ step }) => step.from === point.rows.from)
  return own === undefined ? point : { ...point, remarks: [...point.remarks, own.remark] }
}

function pointsOf(source: SignalSource, common: Omit<PointContext, 'index' | 'residual' | 'tail'>): Point[] {
  const { steps, ripple } = common.record
  const points = steps.map((result, index) => {
    const tail = unaveragedTail(result, ripple.orders, { source, kept: keptFrom(result), context: common })
    const context = { ...common, index, residual: residualOf(result, ripple.orders), tail }
    return pointOf(barePoint(result, context), source, context)
  })
  return points.map((point, i) => ({
    ...point,
    direction: i > 0 ? directionFrom(points[i - 1], point) : points.length > 1 ? directionFrom(point, points[1]) : 1,
  }))
}

const directionFrom = (before: Point, after: Point): 1 | -1 =>
  after.slidingSpeed < before.slidingSpeed * 0.98 ? -1 : 1

/** Largest run-out of the gap over the steps that hold a turn, m. */
function largestRunOut(record: RecordFriction, trends: readonly (GapTrend | undefined)[]): number {
  const seen = trends.filter((trend, s) => (record.steps[s].products?.turns ?? 0) >= 1 && trend !== undefined)
  return seen.reduce((most, trend) => (trend !== undefined && trend.runOut > most ? trend.runOut : most), 0)
}

function rippleOf(record: RecordFriction): RecordRipple[] {
  const usable = record.steps.flatMap((step) => (step.products === undefined ? [] : [step.products]))
  return record.ripple.measured.flatMap((measured): RecordRipple[] => {
    const friction = pooledRipple(measured, usable, { scale: 'relative' })
    const force = pooledRipple({ ...measured, friction: measured.force }, usable, { scale: 'absolute' })
    if (friction === undefined || force === undefined) return []
    return [
      {
        order: measured.order,
        friction: Math.hypot(friction.cosine, friction.sine),
        force: Math.hypot(force.cosine, force.sine),
        torque: Math.hypot(friction.cosine + force.cosine, friction.sine + force.sine),
        uncertainty: Math.sqrt(friction.variance + friction.between),
      },
    ]
  })
}

/** What neither the record nor the setup tells. */
function missingChannels(channels: Channels, setup: Setup): Problem[] {
  const has = (...names: Channels['names']) => names.some((name) => channels.names.includes(name))
  const problem = (name: string, mend: string): Problem => ({
    kind: 'quantityMissing',
    class: 'badInput',
    place: { name },
    what: `Neither the record nor the setup tells the ${name}.`,
    mend,
  })
  const problems: Problem[] = []
  if (channels.rows === 0)
    problems.push({ ...problem('rows', 'Give a record with rows.'), what: 'The record has no rows.' })
  if (!has('time')) problems.push(problem('time', 'Name the time column.'))
  if (!has('torque', 'frictionForce')) problems.push(problem('torque', 'Name the torque or friction force column.'))
  if (!has('axialForce') && setup.run.axialForce === undefined) {
    problems.push(problem('axial force', 'Write "axialForce" under "run" in the setup, such as 5 N.'))
  }
  if (!has('angularVelocity', 'slidingSpeed') && setup.run.angularVelocity === undefined) {
    problems.push(problem('speed', 'Write "angularVelocity" under "run" in the setup, such as 20 1/min.'))
  }
  return problems
}
