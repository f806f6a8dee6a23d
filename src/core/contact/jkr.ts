import type { Metre, Newton } from '../terms/index.ts'
import { adhesionScale, type StickySphere } from './adhesionScale.ts'
import { mustBePositive } from './refuse.ts'

// Adhesion inside the contact, for soft, large and sticky spheres (Tabor parameter over 5). Johnson, Kendall & Roberts 1971,
// Proc. R. Soc. A 324:301, scaled after Maugis 1992; formulas from memory, figures recomputed.

/** Largest pull that the contact bears, 1.5πwR, as a positive number. It does not depend on stiffness. */
export const jkrPullOff = (sphere: StickySphere): Newton => 1.5 * adhesionScale(sphere).load

/**
 * Contact radius at a load on the stable branch: ā³ = P̄ + 3 + √(6P̄ + 9). A pull is negative; more pull than the contact
 * bears is a RangeError.
 */
export function jkrRadius(load: Newton, sphere: StickySphere): Metre {
  const scale = adhesionScale(sphere)
  return scale.radius * jkrScaledRadius(load / scale.load)
}

/** Approach at a contact radius: δ̄ = ā² − (2/3)√(6ā). Negative where the sphere is stretched. */
export function jkrApproach(contactRadius: Metre, sphere: StickySphere): Metre {
  mustBePositive(contactRadius, 'contact radius', 'm')
  const scale = adhesionScale(sphere)
  const scaled = contactRadius / scale.radius
  return scale.approach * (scaled ** 2 - (2 / 3) * Math.sqrt(6 * scaled))
}

/** ā of P̄ in units of `adhesionScale`. */
function jkrScaledRadius(load: number): number {
  // Rounding may put the pull-off load itself a hair beyond the end.
  const room = 6 * load + 9
  if (!(room >= -1e-12 && load < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`load must be at least -1.5 and finite in units of πwR, got ${load}`)
  }
  return Math.cbrt(load + 3 + Math.sqrt(Math.max(0, room)))
}
