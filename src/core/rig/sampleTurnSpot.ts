import { randomFrom } from '../numeric/index.ts'
import type { Setup } from '../terms/index.ts'
import { familyLaw } from './familyLaw.ts'
import { between, evenInLog } from './sampleNumbers.ts'
import { exactSetup, oneStep, threeBallsOf } from './sampleOneStep.ts'
import { usualColumns, type VirtualRun } from './virtualRun.ts'

/** A step of many turns for the coverage study; `spot` false where nothing grows. */
export interface SampledTurnSpot {
  readonly run: VirtualRun
  /** The same without noise: what it shows is the truth. */
  readonly quiet: VirtualRun
  readonly setup: Setup
  readonly spot: boolean
  /** Turn at which the spot begins. */
  readonly onset: number
  readonly seed: number
}

/**
 * 20 to 200 turns of 60 to 400 samples with ripple, running-in and, in two thirds of the cases, a spot of 10 to 40° whose friction grows by 2 to 30 %
 * from somewhere in the first 60 % of the way; torque noise of 0.1 to 2 % of friction, part of it with memory.
 */
export function sampleTurnSpot(seed: number, index: number): SampledTurnSpot {
  const random = randomFrom(seed, index)
  const fixture = { ...threeBallsOf(6.35e-3), balls: 1 }
  const axialForce = evenInLog(random, 1, 10)
  const friction = between(random, 0.1, 0.4)
  const turns = evenInLog(random, 20, 200)
  const path = 2 * Math.PI * fixture.trackRadius
  const speed = 0.05
  const seconds = (turns * path) / speed
  const spot = random.uniform() < 2 / 3
  const onset = between(random, 0.1, 0.6) * turns
  const torque = friction * fixture.trackRadius * axialForce
  const noise = torque * evenInLog(random, 1e-3, 2e-2)
  const remembered = between(random, 0, 0.8)
  const run: VirtualRun = {
    fixture,
    rig: {
      noise: {
        torque: {
          white: noise * Math.sqrt(1 - remembered),
          correlated: noise * Math.sqrt(remembered),
          correlation: between(random, 0, 0.9),
        },
      },
      riseTime: 0,
    },
    sheet: oneStep({ speed, seconds, samplingRate: (evenInLog(random, 60, 400) * speed) / path, axialForce }),
    friction: familyLaw('plateau', { h: friction }),
    disturbances: {
      frictionRipple: [{ order: 1, amplitude: between(random, 0, 0.1), phase: between(random, 0, 2 * Math.PI) }],
      runningIn: { excess: between(random, 0, 0.2), distance: between(random, 0.05, 0.3) * turns * path },
      ...(spot
        ? {
            wornSpot: {
              angle: between(random, 0, 2 * Math.PI),
              width: (between(random, 10, 40) * Math.PI) / 180,
              excess: evenInLog(random, 0.02, 0.3),
              from: onset * path,
              to: turns * path,
            },
          }
        : {}),
    },
    columns: usualColumns,
  }
  return {
    run,
    quiet: { ...run, rig: { ...run.rig, noise: {} } },
    setup: exactSetup(fixture, axialForce),
    spot,
    onset,
    seed: random.integer(4294967296),
  }
}
