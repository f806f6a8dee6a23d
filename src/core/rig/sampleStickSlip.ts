import { fixtureGeometry } from '../fixture/index.ts'
import { randomFrom } from '../numeric/index.ts'
import type { Setup } from '../terms/index.ts'
import { familyLaw } from './familyLaw.ts'
import { between, evenInLog } from './sampleNumbers.ts'
import { exactSetup, oneStep, threeBallsOf } from './sampleOneStep.ts'
import type { StickSlip } from './stickSlip.ts'
import { type Oscillator, slipTime, stickTime } from './stickSlipOscillator.ts'
import { usualColumns, type VirtualRun } from './virtualRun.ts'

/** One step of stick–slip for the coverage study, with what its numbers should be. */
export interface SampledStickSlip {
  readonly run: VirtualRun
  readonly setup: Setup
  readonly truth: { readonly frequency: number; readonly amplitude: number; readonly stickShare: number }
  readonly seed: number
}

const fixture = threeBallsOf(6.35e-3)

/**
 * A saw-tooth or the swing of a shaft with inertia, whose drop scatters by 3 to 15 % from cycle to cycle; 10 to 60 cycles of 15 to 60
 * samples, torque noise of 0.05 to 1 % of friction, part of it with memory.
 */
export function sampleStickSlip(seed: number, index: number): SampledStickSlip {
  const random = randomFrom(seed, index)
  const speed = evenInLog(random, 2e-4, 5e-3)
  const axialForce = evenInLog(random, 1, 10)
  const friction = between(random, 0.1, 0.5)
  const share = between(random, 0.08, 0.3)
  const scatter = between(random, 0.03, 0.15)
  const { lever, loadFactor } = fixtureGeometry(fixture)
  const torque = friction * loadFactor * lever * axialForce
  const frequency = evenInLog(random, 0.3, 3)
  const spring = random.uniform() < 0.5
  // A shaft whose slip takes between nothing and a sixth of the cycle.
  const stiffness = (2 * share * torque * lever * frequency) / speed
  const natural = Math.PI * frequency * evenInLog(random, 6, 40)
  const inertia = stiffness / natural ** 2
  const shaft = spring ? { inertia, torsionalStiffness: stiffness } : {}
  const oscillator: Oscillator = {
    stiffness: stiffness / lever ** 2,
    mass: inertia / lever ** 2,
    forceDrop: share * friction * loadFactor * axialForce,
    dampingRatio: 0,
  }
  const stick = spring ? stickTime(oscillator, speed) : 1 / frequency
  const period = stick + (spring ? slipTime(oscillator, speed) : 0)
  const samplingRate = Math.round(evenInLog(random, 15, 60) / period)
  const stickSlip: StickSlip = spring
    ? { kind: 'spring', staticExcess: share, dampingRatio: 0, scatter }
    : { kind: 'sawTooth', below: 2 * speed, frequency, share, scatter }
  const noise = torque * evenInLog(random, 5e-4, 1e-2)
  const remembered = between(random, 0, 0.8)
  const run: VirtualRun = {
    fixture,
    rig: {
      noise: {
        torque: {
          white: noise * Math.sqrt(1 - remembered),
          correlated: noise * Math.sqrt(remembered),
          correlation: between(random, 0, 0.7),
        },
        axialForce: { white: 1e-3 * axialForce },
      },
      riseTime: 0,
      ...shaft,
    },
    sheet: oneStep({
      speed,
      seconds: period * between(random, 14, 64),
      samplingRate: Math.max(2, samplingRate),
      axialForce,
    }),
    friction: familyLaw('plateau', { h: friction }),
    disturbances: { stickSlip },
    columns: usualColumns,
  }
  return {
    run,
    setup: exactSetup(fixture, axialForce, shaft),
    truth: { frequency: 1 / period, amplitude: 2 * share * friction, stickShare: stick / period },
    seed: random.integer(4294967296),
  }
}
