import { fixtureGeometry } from '../fixture/index.ts'
import { type Random, randomFrom } from '../numeric/index.ts'
import type { CurveModelName, Setup } from '../terms/index.ts'
import { familyLaw } from './familyLaw.ts'
import { sampleFixture } from './sampleFixture.ts'
import { sampleLaw } from './sampleLaw.ts'
import { between, evenInLog } from './sampleNumbers.ts'
import type { TurnRipple } from './turnRipple.ts'
import type { VirtualRig } from './virtualRig.ts'
import { type RunSheet, usualColumns, type VirtualRun } from './virtualRun.ts'

/** One draw of the coverage study: what is simulated, what the reduction is told, and what it should find. */
export interface SampledRun {
  readonly run: VirtualRun
  readonly setup: Setup
  readonly curve: { readonly model: CurveModelName; readonly parameters: Readonly<Record<string, number>> }
  /** Seed of the record's noise. */
  readonly seed: number
}

/**
 * A varied run. The study asks whether own uncertainties cover, so the rig has no error of scale and no zero to find; it
 * has noise with memory, ripple, a slow start of every step, and slow steps of less than a turn.
 */
export function sampleRun(seed: number, index: number): SampledRun {
  const random = randomFrom(seed, index)
  const fixture = sampleFixture(random)
  const { lever, loadFactor } = fixtureGeometry(fixture)
  const sheet = sampleSheet(random, lever)
  const { slowest, fastest } = sheet.speeds
  const curve = sampleLaw(random, { slowest, fastest })
  const friction = familyLaw(curve.model, curve.parameters)
  const torque = friction.at(Math.sqrt(slowest * fastest)) * loadFactor * lever * sheet.axialForce
  const run: VirtualRun = {
    fixture,
    rig: sampleRig(random, { torque, axialForce: sheet.axialForce, seconds: sheet.dwell.seconds }),
    sheet,
    friction,
    disturbances: {
      frictionRipple: sampleRipple(random),
      forceRipple: sampleRipple(random),
      gapRunOut: { amplitude: between(random, 0, 2e-6), phase: between(random, 0, 2 * Math.PI) },
    },
    columns: usualColumns,
  }
  return { run, setup: setupFor(run), curve, seed: random.integer(4294967296) }
}

type RangeSheet = RunSheet & {
  readonly speeds: Extract<RunSheet['speeds'], { kind: 'range' }>
  readonly dwell: Extract<RunSheet['dwell'], { kind: 'time' }>
}

/** 8 to 24 steps of 60 to 600 samples; the slow 5 to 35 % of them turn less than once, the fastest at most 80 rad/s. */
function sampleSheet(random: Random, lever: number): RangeSheet {
  const samplingRate = [10, 20, 50][random.integer(3)]
  const samples = Math.round(evenInLog(random, 60, 600))
  const steps = 8 + random.integer(17)
  const decades = between(random, 1.5, 3)
  const seconds = samples / samplingRate
  const oneTurn = (2 * Math.PI * lever) / seconds
  const slowest = oneTurn * 10 ** (-decades * between(random, 0.05, 0.35))
  const fastest = Math.min(slowest * 10 ** decades, 80 * lever)
  const perDecade = (steps - 1) / Math.log10(fastest / slowest)
  return {
    speeds: { kind: 'range', slowest, fastest, perDecade, direction: random.uniform() < 0.7 ? 'up' : 'down' },
    dwell: { kind: 'time', seconds },
    samplingRate,
    axialForce: evenInLog(random, 1, 20),
    temperature: 298.15,
    gap: 0,
    blankBefore: false,
    blankAfter: false,
    lift: 1e-3,
  }
}

/**
 * Torque noise of 0.01 to 0.5 % and force noise of 0.02 to 0.5 %, half to all of it with memory, correlation 0 to 0.9. A
 * step lasts 25 to 100 time constants of the drive: one that never settles has no friction at its speed to be found.
 */
function sampleRig(random: Random, scale: { torque: number; axialForce: number; seconds: number }): VirtualRig {
  const remembered = between(random, 0.5, 1)
  const channel = (size: number) => ({
    white: size * Math.sqrt(1 - remembered),
    correlated: size * Math.sqrt(remembered),
    correlation: between(random, 0, 0.9),
  })
  return {
    noise: {
      torque: channel(scale.torque * evenInLog(random, 1e-4, 5e-3)),
      axialForce: channel(scale.axialForce * evenInLog(random, 2e-4, 5e-3)),
      gap: { white: 1e-7 },
      temperature: { white: 0.02 },
    },
    riseTime: scale.seconds / evenInLog(random, 25, 100),
  }
}

/** 0 to 5 % once per turn, and in a third of the runs a little of the second or third order. */
function sampleRipple(random: Random): readonly TurnRipple[] {
  const ripple = (order: number, most: number): TurnRipple => ({
    order,
    amplitude: between(random, 0, most),
    phase: between(random, 0, 2 * Math.PI),
  })
  const first = ripple(1, 0.05)
  return random.uniform() < 1 / 3 ? [first, ripple(2 + random.integer(2), 0.01)] : [first]
}

/** The setup that fits the run: everything known, nothing wrong with the scales. */
function setupFor(run: VirtualRun): Setup {
  return {
    rig: {
      name: 'virtual rig',
      torque: { scaleAccuracy: 0 },
      axialForce: { scaleAccuracy: 0 },
      angularVelocity: {},
    },
    fixture: run.fixture,
    pair: { upper: { name: 'upper body' }, lower: { name: 'lower body' } },
    run: { axialForce: run.sheet.axialForce, temperature: run.sheet.temperature },
    options: {},
  }
}
