import { type FrictionLaw, usualColumns, type VirtualRun } from '../rig/index.ts'
import type { Ratio } from '../terms/index.ts'
import type { Plan } from './planOf.ts'

/** Temperature of a run that names none. */
const roomTemperature = 296.15

/** How the virtual rig carries out a plan. */
export interface TrialRun {
  /** Friction as it shall truly be. */
  readonly friction: FrictionLaw
  /** Samples per second. */
  readonly samplingRate: number
  /** Leave out the noise that the plan expects. */
  readonly quiet?: true
}

/**
 * The plan forwards: what the virtual rig would be told, so that a record with known truth can be reduced and held against the
 * plan. Steps, load and noise are the plan's own; zeroes are true, as a plan knows only how uncertain they are.
 */
export function virtualRunOfPlan(plan: Plan, { friction, samplingRate, quiet }: TrialRun): VirtualRun {
  if (!(samplingRate > 0)) throw new RangeError(`sampling rate must be more than zero, got ${samplingRate} 1/s`)
  const { question, noise, points, suggestion } = plan
  const { ask, rig } = question
  const correlation = correlationOf(noise.correlationTime * samplingRate)
  return {
    fixture: question.fixture,
    rig: {
      ...(rig.torque.ceiling === undefined ? {} : { torqueCeiling: rig.torque.ceiling }),
      noise:
        quiet === true
          ? {}
          : {
              torque: { correlated: noise.torque, correlation },
              axialForce: { correlated: noise.axialForce, correlation },
            },
      riseTime: 0,
      ...(rig.inertia === undefined ? {} : { inertia: rig.inertia }),
    },
    sheet: {
      speeds: { kind: 'list', speeds: points.map(({ slidingSpeed }) => slidingSpeed) },
      dwell: { kind: 'turns', turns: ask.turns, least: ask.leastDwell, most: ask.mostDwell },
      samplingRate,
      axialForce: suggestion.axialForce,
      temperature: question.run.temperature ?? roomTemperature,
      gap: 0,
      blankBefore: false,
      blankAfter: false,
      lift: 1e-3,
    },
    friction,
    disturbances: {},
    columns: usualColumns,
  }
}

/** Lag-one correlation of readings whose integrated autocorrelation time is `samples`: τ = (1 + φ)/(1 − φ) backwards. */
const correlationOf = (samples: number): Ratio => (samples > 1 ? (samples - 1) / (samples + 1) : 0)
