import type { Metre, Newton } from '../terms/index.ts'
import { adhesionScale, type StickySphere } from './adhesionScale.ts'

// Adhesion in a ring round a Hertzian contact, for stiff, small and weakly sticking spheres (Tabor parameter under 0.1).
// Derjaguin, Muller & Toporov 1975, J. Colloid Interface Sci. 53:314, in the form of Maugis 1992; from memory, recomputed.

/** Largest pull that the contact bears, 2πwR, as a positive number. */
export const dmtPullOff = (sphere: StickySphere): Newton => 2 * adhesionScale(sphere).load

/** Contact radius at a load: ā³ = P̄ + 2. A pull is negative; more than the contact bears is a RangeError. */
export function dmtRadius(load: Newton, sphere: StickySphere): Metre {
  const scale = adhesionScale(sphere)
  const scaled = load / scale.load + 2
  if (!(scaled >= -1e-12 && scaled < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`load must be at least -2πwR = ${-2 * scale.load} N and finite, got ${load} N`)
  }
  return scale.radius * Math.cbrt(Math.max(0, scaled))
}

/** Approach at a contact radius, as Hertz': δ = a²/R. */
export const dmtApproach = (contactRadius: Metre, sphere: StickySphere): Metre => contactRadius ** 2 / sphere.radius
