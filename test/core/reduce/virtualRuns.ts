import { reduceRecord } from '../../../src/core/reduce/index.ts'
import {
  type Disturbances,
  familyLaw,
  type RunSheet,
  simulateRecord,
  type VirtualRig,
  type VirtualRun,
} from '../../../src/core/rig/index.ts'
import type { ChannelName, FixtureSpec, Reduction, Setup } from '../../../src/core/terms/index.ts'

export const threeBalls = {
  kind: 'ballsOnPlate',
  balls: 3,
  ballDiameter: 0.00635,
  trackRadius: 0.015,
  trackRadiusUncertainty: 0,
} as const satisfies FixtureSpec

const sheet: RunSheet = {
  speeds: { kind: 'range', slowest: 1e-3, fastest: 0.2, perDecade: 4, direction: 'up' },
  dwell: { kind: 'time', seconds: 12 },
  samplingRate: 10,
  axialForce: 5,
  temperature: 298.15,
  gap: 0,
  blankBefore: false,
  blankAfter: false,
  lift: 2e-3,
}

const rig: VirtualRig = {
  noise: {
    torque: { correlated: 4e-6, correlation: 0.6 },
    axialForce: { correlated: 0.005, correlation: 0.6 },
    gap: { white: 1e-7 },
    temperature: { white: 0.02 },
  },
  riseTime: 0.25,
}

const law = familyLaw('stribeck', { k: 0.09, n: 0.35, h: 0.22, x0: 0.008, m: 1.3 })

export interface Wish {
  readonly fixture?: FixtureSpec
  readonly sheet?: Partial<RunSheet>
  readonly rig?: Partial<VirtualRig>
  readonly disturbances?: Disturbances
  readonly columns?: readonly ChannelName[]
  readonly setup?: (setup: Setup) => Setup
  readonly seed?: number
}

const columns: readonly ChannelName[] = [
  'step',
  'time',
  'angularVelocity',
  'torque',
  'axialForce',
  'gap',
  'temperature',
  'angle',
]

/** A run of the virtual rig and what the reduction makes of it. */
export function reduced(wish: Wish = {}): {
  reduction: Reduction
  run: VirtualRun
  friction: readonly (number | null)[]
} {
  const run: VirtualRun = {
    fixture: wish.fixture ?? threeBalls,
    rig: { ...rig, ...wish.rig },
    sheet: { ...sheet, ...wish.sheet },
    friction: law,
    disturbances: wish.disturbances ?? {},
    columns: wish.columns ?? columns,
  }
  const plain: Setup = {
    rig: { name: 'virtual rig', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
    fixture: run.fixture,
    pair: { upper: { name: 'upper' }, lower: { name: 'lower' } },
    run: { axialForce: run.sheet.axialForce, temperature: run.sheet.temperature },
    options: {},
  }
  const { channels, truth } = simulateRecord(run, wish.seed ?? 1)
  const outcome = reduceRecord(channels, wish.setup?.(plain) ?? plain)
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  const friction = truth.steps.filter((step) => step.kind !== 'blank').map((step) => step.friction)
  return { reduction: outcome.value, run, friction }
}

export const kindsOf = (reduction: Reduction): string[][] =>
  reduction.points.map((point) => point.remarks.map((remark) => remark.kind))
