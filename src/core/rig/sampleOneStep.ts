import type { FixtureSpec, Metre, MetrePerSecond, Newton, RigSpec, Second, Setup } from '../terms/index.ts'
import type { RunSheet } from './virtualRun.ts'

/** Three balls on a track of 15 mm, as the studies of single steps use them. */
export const threeBallsOf = (ballDiameter: Metre): Extract<FixtureSpec, { kind: 'ballsOnPlate' }> => ({
  kind: 'ballsOnPlate',
  balls: 3,
  ballDiameter,
  trackRadius: 15e-3,
  trackRadiusUncertainty: 0,
})

/** One step at one speed, without blanks. */
export const oneStep = (step: {
  readonly speed: MetrePerSecond
  readonly seconds: Second
  readonly samplingRate: number
  readonly axialForce: Newton
}): RunSheet => ({
  speeds: { kind: 'list', speeds: [step.speed] },
  dwell: { kind: 'time', seconds: step.seconds },
  samplingRate: step.samplingRate,
  axialForce: step.axialForce,
  temperature: 298.15,
  gap: 0,
  blankBefore: false,
  blankAfter: false,
  lift: 1e-3,
})

/** A setup without an error of scale: such studies ask for own uncertainties alone. */
export const exactSetup = (fixture: FixtureSpec, axialForce: Newton, rig: Partial<RigSpec> = {}): Setup => ({
  rig: {
    name: 'virtual rig',
    torque: { scaleAccuracy: 0 },
    axialForce: { scaleAccuracy: 0 },
    angularVelocity: {},
    ...rig,
  },
  fixture,
  pair: { upper: { name: 'upper body' }, lower: { name: 'lower body' } },
  run: { axialForce },
  options: {},
})
