import { fixtureGeometry } from '../../core/fixture/index.ts'
import { type Random, randomFrom } from '../../core/numeric/index.ts'
import { reduceRecord } from '../../core/reduce/index.ts'
import { holdDefaults, holdOf } from '../../core/reduce/questions/index.ts'
import { familyLaw, simulateRecord, usualColumns, type VirtualRun } from '../../core/rig/index.ts'
import type { Bounded, Hold, Setup } from '../../core/terms/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const holdGroups = [
  'steady friction of a hold',
  'excess of running-in',
  'length of running-in',
  'distance to the steady state',
  'friction over the last third',
  'change over the last third',
  'life to a threshold',
  'change of the gap per metre',
] as const

const [steady, excess, length, toSteady, late, change, life, gap] = holdGroups

const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform()
const evenInLog = (random: Random, low: number, high: number): number => low * (high / low) ** random.uniform()

const riseTime = 0.2
const samplingRate = 10

/** What one hold is made with. */
interface Made {
  readonly friction: number
  readonly excess: number
  readonly length: number
  readonly failure: { readonly distance: number; readonly width: number; readonly friction: number } | null
  readonly wear: number
  readonly threshold: number | null
  /** True distance of a row less that which the record tells: what was slid before its first row, less one row by which friction lags. */
  readonly ahead: number
}

/** One virtual hold, half of them with a coating that fails: which intervals hold what it was made with. */
export function coverHold(seed: number, index: number): CoverageMark[] {
  const random = randomFrom(seed, index)
  const { run, setup, made } = sampleHold(random, index % 2 === 1)
  const { channels } = simulateRecord(run, random.integer(4294967296))
  const reduction = reduceRecord(channels, setup)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  const record = { channels, setup, reduction: reduction.value }
  const hold = holdOf(record, { ...holdDefaults, threshold: made.threshold })
  if (!hold.ok) throw new Error(hold.problems.map(({ what }) => what).join(' '))
  return made.failure === null ? runInMarks(hold.value, made) : lifeMarks(hold.value, made)
}

function sampleHold(random: Random, fails: boolean): { run: VirtualRun; setup: Setup; made: Made } {
  const fixture = {
    kind: 'ballsOnPlate',
    balls: 3,
    ballDiameter: 6.35e-3,
    trackRadius: 15e-3,
    trackRadiusUncertainty: 0,
  } as const
  const { lever, loadFactor } = fixtureGeometry(fixture)
  const [speed, force] = [evenInLog(random, 0.01, 0.2), evenInLog(random, 1, 20)]
  const seconds = evenInLog(random, 120, 600)
  const whole = speed * seconds
  const friction = evenInLog(random, 0.05, 0.4)
  const torque = friction * loadFactor * lever * force
  const noise = torque * evenInLog(random, 1e-3, 2e-2)
  const failure = fails
    ? {
        distance: whole * between(random, 0.3, 0.8),
        width: whole * between(random, 0.005, 0.1),
        friction: friction * between(random, 1.6, 4),
      }
    : null
  const interval = 1 / samplingRate
  const made: Made = {
    ahead: speed * (interval + riseTime * Math.expm1(-interval / riseTime) - interval),
    friction,
    excess: fails ? 0 : evenInLog(random, 0.1, 0.8),
    length: whole * evenInLog(random, 0.02, 0.15),
    failure,
    wear: evenInLog(random, 1e-8, 1e-6),
    threshold: failure === null ? null : friction + (failure.friction - friction) * between(random, 0.25, 0.75),
  }
  const run: VirtualRun = {
    fixture,
    rig: {
      noise: {
        torque: { correlated: noise, correlation: between(random, 0, 0.9) },
        axialForce: { white: 2e-3 * force },
        gap: { white: 1e-7 },
      },
      riseTime,
    },
    sheet: {
      speeds: { kind: 'list', speeds: [speed] },
      dwell: { kind: 'time', seconds },
      samplingRate,
      axialForce: force,
      temperature: 298.15,
      gap: 0,
      blankBefore: false,
      blankAfter: false,
      lift: 1e-3,
    },
    friction: familyLaw('plateau', { h: friction }),
    disturbances: {
      runningIn: { excess: made.excess, distance: made.length },
      frictionRipple: [{ order: 1, amplitude: between(random, 0, 0.03), phase: between(random, 0, 6.28) }],
      wear: { kind: 'perDistance', rate: made.wear },
      ...(failure === null ? {} : { coatingFailure: failure }),
    },
    columns: usualColumns,
  }
  return { run, setup: setupOf(run), made }
}

const setupOf = ({ fixture, sheet }: VirtualRun): Setup => ({
  rig: { name: 'virtual rig', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
  fixture,
  pair: { upper: { name: 'upper body' }, lower: { name: 'lower body' } },
  run: { axialForce: sheet.axialForce },
  options: {},
})

const mark = (group: string, truth: number, found: Bounded | null | undefined): CoverageMark => ({
  group,
  inside: found == null || found.low === null || found.high === null ? null : found.low <= truth && truth <= found.high,
})

function runInMarks(hold: Hold, made: Made): CoverageMark[] {
  const named = (name: string): Bounded | undefined => hold.quantities.find((quantity) => quantity.name === name)
  const left = (s: number): number => made.excess * Math.exp(-(s + made.ahead) / made.length)
  const { from, to } = hold.runIn
  const third = hold.blocks.filter(({ distance }) => distance >= from)
  const meanLeft = third.reduce((sum, { distance }) => sum + left(distance), 0) / third.length
  const lateTruth = made.friction * (1 + meanLeft)
  const steadyTruth = Math.max(hold.from, made.length * Math.log(made.excess / hold.steadyShare) - made.ahead)

  const isRunIn = hold.law === 'runIn'
  return [
    mark(steady, made.friction, isRunIn ? named('steady') : null),
    mark(excess, made.friction * left(hold.from), isRunIn ? named('excess') : null),
    mark(length, made.length, isRunIn ? named('length') : null),
    mark(toSteady, steadyTruth, isRunIn ? hold.steadyFrom : null),
    mark(late, lateTruth, hold.late),
    mark(change, (made.friction * (left(to) - left(from))) / lateTruth, hold.runIn.change),
    mark(gap, -made.wear, hold.gapCreep),
  ]
}

function lifeMarks({ life: found }: Hold, { friction, failure, threshold, ahead }: Made): CoverageMark[] {
  if (failure === null || threshold === null) return []

  const share = (threshold - friction) / (failure.friction - friction)
  return [mark(life, failure.distance + share * failure.width - ahead, found?.distance)]
}
