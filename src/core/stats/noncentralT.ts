import { stirlingError } from './logGamma.ts'
import { normalCdf } from './normal.ts'

/** Degrees of freedom ν > 0, not necessarily whole, and the noncentrality δ. */
export interface NoncentralT {
  readonly degreesOfFreedom: number
  readonly noncentrality: number
}

/**
 * Probability that a noncentral t, (Z + δ)/√(χ²/ν), is at most t: ∫ Φ(ts − δ) f(s) ds over the distribution of
 * s = √(χ²/ν), by the trapezoid rule in ln s, which converges exponentially as the integrand is analytic and vanishes at both
 * ends (Trefethen & Weideman 2014). Absolute error under 1e-12.
 */
export function noncentralTCdf(t: number, { degreesOfFreedom, noncentrality }: NoncentralT): number {
  if (Number.isNaN(t) || !Number.isFinite(noncentrality)) {
    throw new RangeError(`t must be a number and noncentrality finite, got ${t} and ${noncentrality}`)
  }
  const sum = overChi((s) => normalCdf(t * s - noncentrality), {
    degreesOfFreedom,
    sharpness: noncentrality * noncentrality,
  })
  return Math.min(1, Math.max(0, sum))
}

/**
 * Mean of g(s) over s = √(χ²/ν). `sharpness` is the square of the steepest slope of g by ln s, which with ν sets the step.
 */
export function overChi(
  g: (s: number) => number,
  { degreesOfFreedom, sharpness }: { readonly degreesOfFreedom: number; readonly sharpness: number },
): number {
  const nu = degreesOfFreedom
  if (!(nu > 0 && nu < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`degrees of freedom must be above zero and finite, got ${nu}`)
  }
  const step = Math.min(0.1, 0.4 / Math.sqrt(nu + sharpness / 2))
  const peak = 2 * Math.sqrt(nu / (4 * Math.PI)) * Math.exp(-stirlingError(nu / 2)) * step
  // Density of ln s over that at its peak, s = 1.
  const fall = (w: number): number => nu * (w - Math.expm1(2 * w) / 2)
  let sum = g(1)
  for (const direction of [step, -step]) {
    for (let k = 1; ; k++) {
      const exponent = fall(k * direction)
      if (exponent < -40) break
      sum += Math.exp(exponent) * g(Math.exp(k * direction))
    }
  }
  return peak * sum
}
