import { type FixtureGeometry, torquePerFriction } from '../fixture/index.ts'
import type { Newton, Ratio, RigSpec, Second, SharedSource } from '../terms/index.ts'
import type { ExpectedNoise } from './question.ts'
import { partialTurnBias } from './turnBudget.ts'

/** One step of which the uncertainty is asked for. */
export interface StepQuestion {
  readonly friction: Ratio
  readonly force: Newton
  readonly dwell: Second
  readonly turns: number
}

/** Relative standard uncertainties of one point, the two kinds apart. */
export interface PredictedUncertainty {
  /** Noise of the readings, averaged over the step. */
  readonly own: Ratio
  readonly shared: Readonly<Partial<Record<SharedSource, Ratio>>>
  readonly sharedTotal: Ratio
  /** Both together. */
  readonly total: Ratio
}

/** Half-width of a rectangular error to standard uncertainty (JCGM 100:2008, 4.3.7). */
const rectangular = 1 / Math.sqrt(3)

/** Independent readings that a step is worth when the noise has an integrated autocorrelation time of `correlationTime`. */
export const independentReadings = (dwell: Second, correlationTime: Second): number =>
  correlationTime > 0 ? Math.max(1, dwell / correlationTime) : Math.max(1, dwell)

/**
 * Uncertainty that a point will have: the budget of the reduction, filled with what is known before. A partial turn leaves at most
 * its bias bound of the tilt, taken as a rectangular error.
 */
export function pointUncertainty(
  step: StepQuestion,
  {
    rig,
    geometry,
    noise,
  }: { readonly rig: RigSpec; readonly geometry: FixtureGeometry; readonly noise: ExpectedNoise },
): PredictedUncertainty {
  const torque = step.friction * torquePerFriction(geometry, step.force)
  const readings = independentReadings(step.dwell, noise.correlationTime)
  const own = Math.hypot(noise.torque / torque, noise.axialForce / step.force) / Math.sqrt(readings)
  const shared = {
    torqueScale: rig.torque.scaleAccuracy * rectangular,
    forceScale: rig.axialForce.scaleAccuracy * rectangular,
    forceZero: noise.forceZero / step.force,
    torqueBlank: noise.torqueZero / torque,
    lever: geometry.leverLoadUncertainty,
    tilt: (tiltBias(step.turns, noise.tilt) / step.friction) * rectangular,
  }
  const sharedTotal = Math.hypot(...Object.values(shared))
  return { own, shared, sharedTotal, total: Math.hypot(own, sharedTotal) }
}

/** Largest shift of friction by a tilt that less than one turn lets through; whole turns and more take it out by their harmonics. */
export const tiltBias = (turns: number, tilt: number): number =>
  turns >= 1 - 1e-9 ? 0 : partialTurnBias(turns) * Math.tan(tilt)
