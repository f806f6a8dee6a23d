import type { FixtureGeometry } from '../fixture/index.ts'
import type { Point, Setup } from '../terms/index.ts'
import type { ZeroCorrections } from './zero/corrections.ts'
import { zeroUncertainty } from './zero/forceZero.ts'
import { blankUncertainty } from './zero/torqueBlank.ts'

/** Where on the curve the shared uncertainty is asked for, SI. */
export interface BudgetAt {
  readonly friction: number
  readonly force: number
  readonly time: number
  readonly angularVelocity: number
}

/** What the shared uncertainty is made from beside the setup. */
export interface SharedContext {
  readonly geometry: FixtureGeometry
  readonly corrections: ZeroCorrections
  /** Share of friction by which its load-weighted and its plain mean over a turn differ. */
  readonly meansApart: number
}

/** Half-width of a rectangular distribution to standard uncertainty (JCGM 100:2008, 4.3.7). */
const rectangular = 1 / Math.sqrt(3)

/** Standard uncertainties of friction from what all points have in common, by source. */
export function sharedBudget(
  at: BudgetAt,
  setup: Setup,
  { geometry, corrections, meansApart }: SharedContext,
): Point['shared'] {
  const size = Math.abs(at.friction)
  const perFriction = geometry.loadFactor * geometry.lever * at.force
  return {
    torqueScale: size * setup.rig.torque.scaleAccuracy * rectangular,
    forceScale: size * setup.rig.axialForce.scaleAccuracy * rectangular,
    forceZero: (size * zeroUncertainty(corrections.forceZero, at.time)) / at.force,
    torqueBlank: blankUncertainty(corrections.blank, at.angularVelocity) / perFriction,
    lever: size * geometry.leverLoadUncertainty,
    tilt: size * meansApart * rectangular,
  }
}

/** Root of the sum of squares; the sources are independent. */
export const combined = (shared: Point['shared']): number => Math.hypot(...Object.values(shared))
