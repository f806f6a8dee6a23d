import { randomFrom } from '../../core/numeric/index.ts'
import { breakawayOf } from '../../core/reduce/questions/index.ts'
import { type BreakawayRun, simulateBreakaway } from '../../core/rig/index.ts'
import type { Bounded, Setup } from '../../core/terms/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const breakawayGroups = [
  'static friction',
  'stiffness before sliding',
  'growth of static friction with rest',
  'static friction without rest',
  'time at which ageing sets in',
] as const

const [staticFriction, stiffness, growth, level, ageingTime] = breakawayGroups

/** Ten torque ramps after different dwells: which intervals hold what they were made with. */
export function coverBreakaway(seed: number, index: number): CoverageMark[] {
  const { run, setup, own } = sampleStarts(seed, index)
  const { channels, truth } = simulateBreakaway(run, own)
  const found = breakawayOf(channels, setup)
  if (!found.ok) throw new Error(found.problems.map(({ what }) => what).join(' '))
  const marks = found.value.starts.flatMap((start): CoverageMark[] => {
    const made = truth.starts.find(({ step }) => step === start.step)
    if (made === undefined) return []
    return [
      mark(staticFriction, made.staticFriction, start.staticFriction),
      mark(stiffness, run.torsionalStiffness, start.stiffness),
    ]
  })
  const { ageing } = found.value
  return [
    ...marks,
    mark(growth, run.friction.slope, ageing?.slope),
    mark(level, run.friction.level, ageing?.level),
    openMark(ageingTime, run.friction.time, ageing?.time),
  ]
}

const mark = (group: string, truth: number, found: Bounded | null | undefined): CoverageMark => ({
  group,
  inside: found == null || found.low === null || found.high === null ? null : found.low <= truth && truth <= found.high,
})

/** An open end reaches as far as it likes: which intervals close depends on the data, so those that do not count too. */
const openMark = (group: string, truth: number, found: Bounded | null | undefined): CoverageMark => ({
  group,
  inside: found == null ? null : (found.low ?? 0) <= truth && truth <= (found.high ?? Number.POSITIVE_INFINITY),
})

/**
 * Slides that run away within a row and over a hundred of them, encoders of 0.5 to 20 µrad, shafts of 5 to 60 N·m/rad, with and
 * without creep; static friction that grows by 0.5 to 6 % per e-fold and scatters from start to start.
 */
function sampleStarts(seed: number, index: number): { run: BreakawayRun; setup: Setup; own: number } {
  const random = randomFrom(seed, index)
  const between = (low: number, high: number): number => low + (high - low) * random.uniform()
  const evenInLog = (low: number, high: number): number => low * (high / low) ** random.uniform()
  const fixture = {
    kind: 'ballsOnPlate',
    balls: 3,
    ballDiameter: 6.35e-3,
    trackRadius: 15e-3,
    trackRadiusUncertainty: 0,
  } as const
  const friction = between(0.1, 0.4)
  const [torque, angle] = [evenInLog(1e-6, 2e-5), evenInLog(5e-7, 2e-5)]
  const run: BreakawayRun = {
    fixture,
    axialForce: 5,
    temperature: 296.15,
    samplingRate: 50,
    dwells: [1, 1, 2, 5, 5, 10, 20, 20, 50, 100],
    torqueRate: friction * evenInLog(5e-3, 2e-2),
    mostTorque: 1,
    stopAngle: 0.05,
    fastest: 1,
    inertia: evenInLog(1e-5, 3e-2),
    torsionalStiffness: evenInLog(5, 60),
    creep: random.uniform() < 0.5 ? 0 : evenInLog(1e-5, 1e-3),
    friction: {
      level: friction,
      slope: friction * between(0.005, 0.06),
      time: evenInLog(0.3, 3),
      kinetic: friction * between(0.7, 1),
      scatter: friction * evenInLog(5e-4, 2e-2),
    },
    noise: {
      torque: { white: torque, correlated: torque, correlation: 0.5 },
      axialForce: { white: 5e-3 },
      angle: { white: angle, resolution: angle / 2 },
    },
  }
  return { run, setup: setupOf(run), own: random.integer(4294967296) }
}

const setupOf = ({ fixture, axialForce }: BreakawayRun): Setup => ({
  rig: { name: 'virtual rig', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
  fixture,
  pair: { upper: { name: 'upper body' }, lower: { name: 'lower body' } },
  run: { axialForce },
  options: {},
})
