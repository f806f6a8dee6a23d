import type { Metre, Newton } from '../terms/index.ts'
import { mustBePositive } from './refuse.ts'
import { checkSphere, type SphereOnFlat } from './sphereOnFlat.ts'

/** A sphere that sticks. */
export interface StickySphere extends SphereOnFlat {
  /** Energy to part the surfaces, w = γ₁ + γ₂ − γ₁₂, in J/m². In a liquid it is smaller, often much. */
  readonly workOfAdhesion: number
}

/** The units in which laws of adhesion need no constants. Maugis 1992, J. Colloid Interface Sci. 150:243. */
export interface AdhesionScale {
  /** πwR */
  readonly load: Newton
  /** (πwR²/K)^⅓ with K = 4E*⁄3 */
  readonly radius: Metre
  /** (π²w²R/K²)^⅓ */
  readonly approach: Metre
}

/** Units of load, contact radius and approach for a sticky sphere. */
export function adhesionScale({ radius, effectiveModulus, workOfAdhesion }: StickySphere): AdhesionScale {
  checkSphere(radius, effectiveModulus)
  mustBePositive(workOfAdhesion, 'work of adhesion', 'J/m²')
  const load = Math.PI * workOfAdhesion * radius
  const contact = Math.cbrt((0.75 * load * radius) / effectiveModulus)
  return { load, radius: contact, approach: contact ** 2 / radius }
}
