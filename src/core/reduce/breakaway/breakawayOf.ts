import { fixtureGeometry, torquePerFriction } from '../../fixture/index.ts'
import { median } from '../../numeric/index.ts'
import { printQuantity } from '../../quantity/index.ts'
import type { Bounded, Breakaway, Channels, Outcome, Remark, Setup, Start } from '../../terms/index.ts'
import { done, failed } from '../../terms/index.ts'
import { combined } from '../budget.ts'
import { ageingOf } from './ageing.ts'
import { meanInflationSeen } from './meanInflationSeen.ts'
import { inertiaShare, rampPeak, speedPeak } from './peakCause.ts'
import { type RampFound, rampStart } from './rampStart.ts'
import { type SpeedStartFound, speedStart } from './speedStart.ts'
import { type StartRows, startRows } from './startRows.ts'

/** What may be chosen about breakaway. */
export interface BreakawayOptions {
  /** Sliding that has to be exceeded before it counts as motion, m. Common practice, no source. */
  readonly motion: number
}

/** Ten micrometres of sliding. */
export const breakawayDefaults: BreakawayOptions = { motion: 10e-6 }

/** Rows of a start that are kept for pictures. */
const traceRows = 300

/** Half-width of a rectangular distribution to standard uncertainty (JCGM 100:2008, 4.3.7). */
const rectangular = 1 / Math.sqrt(3)

/** Every start from rest of a record: static friction, pre-sliding stiffness, what its peak is, and how static friction ages. */
export function breakawayOf(
  channels: Channels,
  setup: Setup,
  options: BreakawayOptions = breakawayDefaults,
): Outcome<Breakaway> {
  if (!(options.motion > 0)) throw new RangeError(`motion must be above zero, got ${options.motion} m`)
  const geometry = fixtureGeometry(setup.fixture)
  const rows = startRows(channels, setup)
  const starts = rows.flatMap((start) => startOf(start, setup, options) ?? [])
  if (starts.length === 0) return failed(noStart)
  const aged = starts.flatMap(({ kind, dwell, staticFriction, ownUncertainty }) =>
    staticFriction === null || ownUncertainty === null || kind !== 'torqueRamp'
      ? []
      : [{ dwell, staticFriction: staticFriction.value, uncertainty: ownUncertainty }],
  )
  const ageing = ageingOf(aged)
  const seen = starts.flatMap(({ stiffness }) => (stiffness === null ? [] : [stiffness.value]))
  return done({
    starts,
    ageing: typeof ageing === 'string' ? null : ageing,
    ageingMissing: typeof ageing === 'string' ? ageing : null,
    lever: geometry.lever,
    stiffness: { given: setup.rig.torsionalStiffness ?? null, seen: seen.length === 0 ? null : median(seen) },
    remarks: starts.flatMap(({ remarks }) => remarks),
  })
}

function startOf(rows: StartRows, setup: Setup, options: BreakawayOptions): Start | undefined {
  // A start with the bodies apart, as in a blank, has no friction to break.
  if (!(forceOf(rows, rows.time.length).mean > 0)) return undefined
  return rows.kind === 'torqueRamp'
    ? rampStartOf(rows, setup, rampStart(rows, options.motion / rows.geometry.lever))
    : speedStartOf(rows, setup, options)
}

/** Mean of the axial force over the rows before motion and its standard uncertainty. */
function forceOf({ axialForce }: StartRows, to: number): { mean: number; uncertainty: number } {
  const part = axialForce.subarray(0, Math.max(2, to))
  const mean = part.reduce((sum, value) => sum + value, 0) / part.length
  const residuals = part.map((value) => value - mean)
  const variance = residuals.reduce((sum, value) => sum + value ** 2, 0) / (part.length - 1)
  return { mean, uncertainty: Math.sqrt((meanInflationSeen(residuals) * variance) / part.length) }
}

function sharedOf(friction: number, setup: Setup, leverLoad: number): Start['shared'] {
  return {
    torqueScale: friction * setup.rig.torque.scaleAccuracy * rectangular,
    forceScale: friction * setup.rig.axialForce.scaleAccuracy * rectangular,
    lever: friction * leverLoad,
  }
}

function rampStartOf(rows: StartRows, setup: Setup, found: RampFound): Start {
  const force = forceOf(rows, found.rowsBefore)
  const per = torquePerFriction(rows.geometry, force.mean)
  const value = found.torque === null ? null : found.torque.value / per
  const staticFriction = found.torque === null ? null : frictionOf(found.torque, per, force.uncertainty / force.mean)
  const held = found.heldTorque / per
  const remarks = found.moved ? [] : [noBreakaway(rows, found, held)]
  return {
    step: rows.step,
    kind: 'torqueRamp',
    dwell: rows.dwell,
    torqueRate: found.torqueRate,
    axialForce: force.mean,
    moved: found.moved,
    staticFriction,
    ownUncertainty: staticFriction === null ? null : halfWidth(staticFriction) / 1.96,
    shared: value === null ? {} : sharedOf(value, setup, rows.geometry.leverLoadUncertainty),
    held,
    at:
      found.onset === null || found.torque === null
        ? null
        : { time: found.onset.value, torque: found.torque.value, angle: found.elastic + found.creep },
    stiffness: found.stiffness,
    elastic: found.elastic,
    creep: found.creep,
    angleNoise: found.angleNoise,
    motionThreshold: found.threshold,
    kinetic: null,
    peak: rampPeak(found, setup.rig.inertia),
    remarks,
    trace: traceOf(rows),
  }
}

function frictionOf({ value, low, high }: Bounded, per: number, forceShare: number): Bounded {
  const friction = value / per
  const force = 1.96 * forceShare * friction
  const side = (end: number | null): number | null => (end === null ? null : Math.hypot(end / per - friction, force))
  const [down, up] = [side(low), side(high)]
  return { value: friction, low: down === null ? null : friction - down, high: up === null ? null : friction + up }
}

const halfWidth = ({ value, low, high }: Bounded): number => ((high ?? value) - (low ?? value)) / 2

function speedStartOf(rows: StartRows, setup: Setup, options: BreakawayOptions): Start | undefined {
  const found = speedStart(rows)
  if (found === undefined) return undefined
  const force = forceOf(rows, rows.time.length)
  const per = torquePerFriction(rows.geometry, force.mean)
  const peak = speedPeak(found, setup)
  const inertial = (setup.rig.inertia ?? 0) * Math.max(0, found.accelerationAtPeak)
  const isStatic = peak.cause === 'staticFriction'
  const own = Math.hypot(found.deviation / Math.sqrt(found.peakRows), found.levelUncertainty)
  const broke = found.peak - inertial
  const friction = { value: broke, low: broke - 1.96 * own, high: broke + 1.96 * own }
  const staticFriction = isStatic ? frictionOf(friction, per, force.uncertainty / force.mean) : null
  const { time, angle } = rows
  return {
    step: rows.step,
    kind: 'imposedSpeed',
    dwell: rows.dwell,
    torqueRate: found.rowsToPeak > 0 ? found.peak / (time[found.peakRow] - time[0] || Number.NaN) : Number.NaN,
    axialForce: force.mean,
    moved: true,
    staticFriction,
    ownUncertainty: staticFriction === null ? null : halfWidth(staticFriction) / 1.96,
    shared: staticFriction === null ? {} : sharedOf(staticFriction.value, setup, rows.geometry.leverLoadUncertainty),
    held: broke / per,
    at: isStatic ? { time: time[found.peakRow], torque: broke, angle: angle[found.peakRow] - angle[0] } : null,
    stiffness: stiffnessBounds(found),
    elastic: setup.rig.torsionalStiffness === undefined ? 0 : found.peak / setup.rig.torsionalStiffness,
    creep: 0,
    angleNoise: 0,
    motionThreshold: options.motion / rows.geometry.lever,
    kinetic: found.level / per,
    peak,
    remarks:
      peak.cause === 'inertia' || peak.cause === 'cannotTell' ? [peakNotStatic(rows, found, { peak, inertial })] : [],
    trace: traceOf(rows),
  }
}

const stiffnessBounds = ({ stiffness }: SpeedStartFound): Bounded | null =>
  stiffness && {
    value: stiffness.value,
    low: stiffness.value - 1.96 * stiffness.uncertainty,
    high: stiffness.value + 1.96 * stiffness.uncertainty,
  }

function noBreakaway({ step }: StartRows, found: RampFound, held: number): Remark {
  const limit = found.threshold
  return {
    kind: 'noBreakaway',
    seen: Math.max(0, found.slid),
    limit,
    unit: 'rad',
    step,
    sentence: `No breakaway: friction ${printQuantity(held, 'ratio', { digits: 3 })} was held; the angle went ${printQuantity(Math.max(0, found.slid), 'angle', { digits: 2 })} beyond twist and creep, ${printQuantity(limit, 'angle', { digits: 2 })} would count as motion.`,
    next: 'Ramp to a larger torque, or load the contact less; until then it is a lower bound.',
  }
}

const peakNotStatic = (
  { step }: StartRows,
  found: SpeedStartFound,
  { peak, inertial }: { peak: Start['peak']; inertial: number },
): Remark => ({
  kind: 'peakNotStatic',
  seen: inertial / (found.peak - found.level),
  limit: inertiaShare,
  unit: '',
  step,
  sentence: peak.sentence,
  next: 'Start more slowly, and note inertia and stiffness of the rig in the setup.',
})

function traceOf({ time, torque, angle }: StartRows): Start['trace'] {
  const stride = Math.max(1, Math.ceil(time.length / traceRows))
  const rows = Array.from({ length: Math.ceil(time.length / stride) }, (_, i) => i * stride)
  return rows.map((i) => ({ time: time[i] - time[0], torque: torque[i], angle: angle[i] - angle[0] }))
}

/** Root of the sum of squares of what all starts share. */
export const sharedTogether = ({ shared }: Pick<Start, 'shared'>): number => combined(shared)

const noStart = {
  kind: 'noStart',
  class: 'badInput',
  place: {},
  what: 'The record holds no start from rest: torque never rises from nothing over fifteen rows or more.',
  mend: 'Give a record of torque ramps from rest, or of steps that begin at rest.',
} as const
