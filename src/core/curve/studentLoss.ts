import type { Observations } from './curvePoint.ts'

/**
 * Loss of a residual r whose variance σ² is not known but estimated as V with ν degrees of freedom:
 *
 *     ρ(r) = (ν − 1) ln(1 + r²/(ν V)),
 *
 * Student's log-likelihood with ν − 1 in place of ν + 1. With σ² unknown for each point, ν V + r² is σ² χ²(ν + 1), and
 * independent of r²/(ν V + r²); from that, the score of ρ/2 has variance (ν−1)/((ν+1) σ²) and so has its mean slope. So
 * differences of Σρ follow χ², as differences of −2 ln L must, where the plain Student likelihood would make intervals too
 * short by √((ν−1)/(ν+1)) (our own derivation; checked by simulation in the tests). For ν → ∞ it is r²/V. With few points to
 * a parameter it is on the safe side: a single point's 95 % interval at ν = 3 is ±4.2 √V where Student's is ±3.2 √V.
 */
export interface Spread {
  /** Variance as a multiple of the own one. */
  readonly growth: Float64Array
  /** Variance of each point: own and extra scatter together. */
  readonly variance: Float64Array
  /** Its degrees of freedom (Welch–Satterthwaite, the extra scatter taken as known). */
  readonly freedom: Float64Array
}

/** Own uncertainty and a scatter between steps (standard deviation, as a share of friction) together. */
export function spreadOf({ own, freedom }: Observations, scatter: number): Spread {
  const variance = own.map((u) => u * u + scatter * scatter)
  const growth = variance.map((v, i) => v / own[i] ** 2)
  return { growth, variance, freedom: freedom.map((nu, i) => Math.min(1e9, nu * growth[i] ** 2)) }
}

/** Replaces residuals by the signed roots of their losses, and their gradients by those of the roots. */
export function takeRoots({ variance, freedom }: Spread, residuals: Float64Array, jacobian?: Float64Array): void {
  const count = variance.length
  const columns = jacobian === undefined ? 0 : jacobian.length / residuals.length
  for (let i = 0; i < count; i++) {
    const r = residuals[i]
    const scaled = (r * r) / (freedom[i] * variance[i])
    const least = Math.sqrt((freedom[i] - 1) / (freedom[i] * variance[i]))
    // ln(1 + s) = s (1 − s/2 …): the root is nearly straight, and division by r would lose its slope at zero.
    const bend = scaled < 1e-8 ? 1 - scaled / 4 : Math.sqrt(Math.log1p(scaled) / scaled)
    residuals[i] = least * bend * r
    const slope = least / ((1 + scaled) * bend)
    for (let j = 0; j < columns; j++) (jacobian as Float64Array)[j * residuals.length + i] *= slope
  }
}

/** Σ (ν+1) r²/(ν V + r²): expectation n at the truth and nearly n − p at the fit, whatever ν (same derivation). */
export function weightedSquares({ variance, freedom }: Spread, residuals: Float64Array): number {
  let sum = 0
  for (let i = 0; i < variance.length; i++) {
    const square = residuals[i] * residuals[i]
    sum += ((freedom[i] + 1) * square) / (freedom[i] * variance[i] + square)
  }
  return sum
}

/**
 * −2 ln of the Student likelihood over that of own uncertainties alone without residuals, each point weighted by
 * (ν−1)/(ν+1) so that penalties of 2 a parameter are right.
 */
export function deviance({ growth, variance, freedom }: Spread, residuals: Float64Array): number {
  let sum = 0
  for (let i = 0; i < variance.length; i++) {
    const nu = freedom[i]
    const square = residuals[i] * residuals[i]
    sum += ((nu - 1) / (nu + 1)) * Math.log(growth[i]) + (nu - 1) * Math.log1p(square / (nu * variance[i]))
  }
  return sum
}

/**
 * Standard uncertainty that a plain least-squares draw must give each point to bring out the same spread of the
 * parameters: one over the root of its information, (ν−1)²/((ν+1)(ν V + r²)).
 */
export function effectiveUncertainty({ variance, freedom }: Spread, residuals: Float64Array): Float64Array {
  return residuals.map((r, i) => {
    const nu = freedom[i]
    return Math.sqrt((nu + 1) * (nu * variance[i] + r * r)) / (nu - 1)
  })
}
