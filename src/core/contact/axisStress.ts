import { findMinimum } from '../numeric/index.ts'
import type { Ratio } from '../terms/index.ts'
import { mustBePoissonRatio, mustNotBeNegative } from './refuse.ts'

/** Stresses under the middle of a Hertzian contact as shares of the peak pressure; pressure is negative. */
export interface AxisStress {
  /** σz, along the axis. */
  readonly axial: Ratio
  /** σr = σθ, across it. */
  readonly radial: Ratio
  /** Largest shear, ½|σz − σr|. */
  readonly shear: Ratio
}

/**
 * Stress on the axis at depth `depth`, in contact radii. Johnson 1985, Contact Mechanics, eq. 3.45 (from memory; recomputed
 * figures agree with those printed for ν = 0.3).
 */
export function axisStress(depth: Ratio, poissonRatio: Ratio): AxisStress {
  mustNotBeNegative(depth, 'depth', 'contact radii')
  mustBePoissonRatio(poissonRatio)
  const spread = 1 / (1 + depth ** 2)
  const radial = -(1 + poissonRatio) * (1 - depth * Math.atan2(1, depth)) + spread / 2
  return { axial: -spread, radial, shear: Math.abs(spread + radial) / 2 }
}

/** Where a Hertzian contact shears its body most. */
export interface LargestShear {
  /** As a share of the peak pressure. */
  readonly shear: Ratio
  /** In contact radii below the surface. */
  readonly depth: Ratio
}

/**
 * Largest shear below a Hertzian contact for ν from 0 to 0.5; the handbooks' 0.31 at 0.48 a are for ν = 0.3 alone and 10 to
 * 16 % off for soft polymers. Below ν = 0 the edge shears more than the axis, hence the RangeError.
 */
export function largestShear(poissonRatio: Ratio): LargestShear {
  if (!(poissonRatio >= 0 && poissonRatio <= 0.5)) {
    throw new RangeError(`Poisson ratio must be from 0 to 0.5 for shear on the axis, got ${poissonRatio}`)
  }
  const { at, value } = findMinimum((depth) => -axisStress(depth, poissonRatio).shear, [0.2, 1])
  return { shear: -value, depth: at }
}
