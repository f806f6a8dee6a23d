import type { Metre, Ratio } from '../terms/index.ts'
import type { StickySphere } from './adhesionScale.ts'
import { mustBePositive } from './refuse.ts'
import { checkSphere } from './sphereOnFlat.ts'

/** Spacing of atoms at rest, 0.3 nm: what is usually put in where nobody knows better (common practice, no source). */
export const usualSpacing: Metre = 3e-10

/**
 * How far adhesion stretches the surfaces against the reach of its forces: µ = (Rw²/(E*²z₀³))^⅓. Tabor 1977, J. Colloid
 * Interface Sci. 58:2. Over 5 JKR holds, under 0.1 DMT (Johnson & Greenwood 1997, J. Colloid Interface Sci. 192:326;
 * bounds from memory).
 */
export function taborParameter(sphere: StickySphere, spacing: Metre = usualSpacing): Ratio {
  checkSphere(sphere.radius, sphere.effectiveModulus)
  mustBePositive(sphere.workOfAdhesion, 'work of adhesion', 'J/m²')
  mustBePositive(spacing, 'spacing', 'm')
  return Math.cbrt(sphere.radius * (sphere.workOfAdhesion / sphere.effectiveModulus) ** 2) / spacing
}
