import { printQuantity } from '../quantity/index.ts'
import type { MetrePerSecond, Newton, Point, Ratio, Reduction } from '../terms/index.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import type { Plan } from './planOf.ts'

/** Assumptions of a plan that data can refute. */
export const planAssumptions = ['noise', 'friction', 'axialForce', 'turns', 'steady', 'trusted', 'speeds'] as const

/** Name of one of them. */
export type PlanAssumption = (typeof planAssumptions)[number]

/** One planned step beside the point that came of it. */
export interface HeldPoint {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  readonly predicted: {
    readonly friction: Ratio
    readonly low: Ratio
    readonly high: Ratio
    readonly own: Ratio
    readonly total: Ratio
  }
  /** Relative standard uncertainties; null where the point gave no friction. */
  readonly obtained: { readonly friction: Ratio; readonly own: Ratio; readonly total: Ratio } | null
  readonly failed: readonly PlanAssumption[]
}

/** An assumption that did not hold, with the number that says so. */
export interface FailedAssumption {
  readonly assumption: PlanAssumption
  readonly seen: number
  readonly limit: number
  readonly steps: readonly number[]
  readonly sentence: string
}

/** A reduced record held against its plan. */
export interface HeldAgainstPlan {
  readonly points: readonly HeldPoint[]
  /** Planned steps for which the record has no point. */
  readonly missing: readonly number[]
  readonly failures: readonly FailedAssumption[]
  /** Middle ratio of obtained to predicted own uncertainty; null without points. */
  readonly ownRatio: Ratio | null
  readonly sentence: string
}

/** Speeds that differ by less are one. */
const sameSpeed = 1.03

/** Own uncertainty may come out by this factor larger: it is itself known to about 30 % from ten independent readings. */
const ownFactor = 2

/** Load may differ from the planned one by this share, as the reduction allows it to. */
const forceShare = 0.02

/** Steps may be shorter in turns by this share. */
const turnShare = 0.05

/** What a record gave against what its plan promised: uncertainty of each point, and which assumption failed. */
export function heldAgainstPlan(plan: Plan, reduction: Pick<Reduction, 'points'>): HeldAgainstPlan {
  const left = [...reduction.points]
  const pairs = plan.points.map((planned) => ({ planned, point: taken(left, planned) }))
  const held = pairs.flatMap(({ planned, point }) => (point === undefined ? [] : [heldPoint(planned, point, plan)]))
  const missing = pairs.filter(({ point }) => point === undefined).map(({ planned }) => planned.step)
  const ratios = held.flatMap(({ predicted, obtained }) =>
    obtained === null || predicted.own === 0 ? [] : [obtained.own / predicted.own],
  )
  const sorted = [...ratios].sort((a, b) => a - b)
  const ownRatio = sorted.length === 0 ? null : sorted[sorted.length >> 1]
  const failures = failuresOf(held, { missing, ownRatio, plan, pairs })
  return { points: held, missing, failures, ownRatio, sentence: sentenceOf(held, failures) }
}

/** Takes the point of a planned step out of those that are left: same speed, and the same direction where both ways were run. */
function taken(left: Point[], planned: PlannedPoint): Point | undefined {
  const near = (point: Point): boolean => {
    const ratio = point.slidingSpeed / planned.slidingSpeed
    return ratio < sameSpeed && ratio > 1 / sameSpeed
  }
  const same = left.findIndex((point) => near(point) && point.direction === planned.direction)
  const index = same >= 0 ? same : left.findIndex(near)
  return index < 0 ? undefined : left.splice(index, 1)[0]
}

function heldPoint(planned: PlannedPoint, point: Point, { suggestion }: Plan): HeldPoint {
  const { friction, uncertainty } = planned
  const predicted = {
    friction: friction.value,
    low: friction.low,
    high: friction.high,
    own: uncertainty.own,
    total: uncertainty.total,
  }
  const obtained = obtainedOf(point)
  const failed: PlanAssumption[] = []
  if (obtained === null || !point.trusted) failed.push('trusted')
  if (obtained !== null && obtained.own > ownFactor * predicted.own) failed.push('noise')
  if (obtained !== null && (obtained.friction < friction.low || obtained.friction > friction.high))
    failed.push('friction')
  if (Math.abs(point.axialForce / suggestion.axialForce - 1) > forceShare) failed.push('axialForce')
  if (point.turns < planned.turns * (1 - turnShare) && point.turns < 1) failed.push('turns')
  if (point.remarks.some(({ kind }) => kind === 'notSteady' || kind === 'stickSlip')) failed.push('steady')
  return { step: planned.step, slidingSpeed: planned.slidingSpeed, predicted, obtained, failed }
}

function obtainedOf({ friction, ownUncertainty, sharedUncertainty }: Point): HeldPoint['obtained'] {
  if (friction === null || ownUncertainty === null || friction === 0) return null
  const own = ownUncertainty / Math.abs(friction)
  const shared = (sharedUncertainty ?? 0) / Math.abs(friction)
  return { friction, own, total: Math.hypot(own, shared) }
}

interface Found {
  readonly missing: readonly number[]
  readonly ownRatio: Ratio | null
  readonly plan: Plan
  readonly pairs: readonly { readonly planned: PlannedPoint; readonly point: Point | undefined }[]
}

function failuresOf(
  held: readonly HeldPoint[],
  { missing, ownRatio, plan, pairs }: Found,
): readonly FailedAssumption[] {
  const stepsOf = (assumption: PlanAssumption): readonly number[] =>
    held.filter(({ failed }) => failed.includes(assumption)).map(({ step }) => step)
  const two = (value: number): string => String(Number(value.toPrecision(2)))
  const forces = pairs.flatMap(({ point }) => (point === undefined ? [] : [point.axialForce]))
  const furthest = forces.reduce<Newton>(
    (far, one) => (Math.abs(one - plan.suggestion.axialForce) > Math.abs(far - plan.suggestion.axialForce) ? one : far),
    plan.suggestion.axialForce,
  )
  const turns = held.filter(({ failed }) => failed.includes('turns')).length
  const candidates: readonly FailedAssumption[] = [
    {
      assumption: 'noise',
      seen: ownRatio ?? 0,
      limit: ownFactor,
      steps: stepsOf('noise'),
      sentence: `Readings were noisier than planned: the own uncertainty is ${two(ownRatio ?? 0)} times the predicted one in the middle. Put the seen noise into the question.`,
    },
    {
      assumption: 'friction',
      seen: held.filter(({ failed }) => failed.includes('friction')).length,
      limit: 0,
      steps: stepsOf('friction'),
      sentence:
        'Friction lies outside the predicted band: expected friction, viscosity or roughness were another. Torque limits must be looked at again.',
    },
    {
      assumption: 'axialForce',
      seen: Math.abs(furthest / plan.suggestion.axialForce - 1),
      limit: forceShare,
      steps: stepsOf('axialForce'),
      sentence: `The load was not the planned ${printQuantity(plan.suggestion.axialForce, 'force', { digits: 3 })}: it went to ${printQuantity(furthest, 'force', { digits: 3 })}.`,
    },
    {
      assumption: 'turns',
      seen: turns,
      limit: 0,
      steps: stepsOf('turns'),
      sentence:
        'Steps covered less of a turn than planned: the cut at their head took part of it, or they were shorter.',
    },
    {
      assumption: 'steady',
      seen: stepsOf('steady').length,
      limit: 0,
      steps: stepsOf('steady'),
      sentence: 'Steps were not steady: the conditioning was too short, or the contact sticks and slips.',
    },
    {
      assumption: 'trusted',
      seen: stepsOf('trusted').length,
      limit: 0,
      steps: stepsOf('trusted'),
      sentence: 'Steps that the plan held to be measurable gave no trusted value; their remarks say why.',
    },
    {
      assumption: 'speeds',
      seen: missing.length,
      limit: 0,
      steps: missing,
      sentence: 'Planned speeds are missing from the record.',
    },
  ]
  return candidates.filter(({ steps }) => steps.length > 0)
}

function sentenceOf(held: readonly HeldPoint[], failures: readonly FailedAssumption[]): string {
  if (held.length === 0) return 'No point of the record lies at a planned speed: it was made by another plan.'
  const kept = held.filter(({ failed }) => failed.length === 0).length
  if (failures.length === 0) return `All ${held.length} points came out as planned.`
  return `${kept} of ${held.length} points came out as planned. ${failures.map(({ sentence }) => sentence).join(' ')}`
}
