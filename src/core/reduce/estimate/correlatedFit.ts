import { invertSymmetric } from '../../numeric/index.ts'
import { type LaggedProducts, whitened } from './laggedProducts.ts'

/** What is known of a coefficient before the fit: normal, in the units of the response. */
export interface PriorBelief {
  readonly mean: number
  readonly deviation: number
}

/** What a regression with autocorrelated errors gives. */
export interface CorrelatedFit {
  readonly coefficients: Float64Array
  /** Covariance of the coefficients, row-major. */
  readonly covariance: Float64Array
  /** Variance of the innovations. */
  readonly variance: number
  /** Rows less the coefficients that the data themselves had to fix. */
  readonly degreesOfFreedom: number
  /** Restricted log-likelihood of the correlation, up to a constant (Harville 1974). */
  readonly logLikelihood: number
}

/**
 * Linear regression with first-order autoregressive errors of known lag-one correlation, by generalised least squares;
 * beliefs enter as further observations (Theil & Goldberger 1961). Undefined where the columns cannot be told apart.
 *
 * @param products of regressors with the response as last column
 * @param correlation lag-one correlation of the errors, −1 < ρ < 1
 * @param beliefs one for each coefficient; undefined for none
 */
export function correlatedFit(
  products: LaggedProducts,
  correlation: number,
  beliefs: readonly (PriorBelief | undefined)[] = [],
): CorrelatedFit | undefined {
  if (!(Math.abs(correlation) < 1)) throw new RangeError(`correlation must lie between −1 and 1, got ${correlation}`)
  const size = products.size - 1
  const normal = whitened(products, correlation)
  const believes = beliefs.some((belief) => belief !== undefined)
  let variance = believes ? flatVariance(products, normal) : 1
  let solved: Solution | undefined
  for (let round = 0; round < (believes ? 4 : 1); round++) {
    solved = solve(normal, size, { beliefs, variance, rows: products.rows })
    if (solved === undefined) return undefined
    variance = solved.degreesOfFreedom > 0 ? solved.sumOfSquares / solved.degreesOfFreedom : Number.NaN
  }
  if (solved === undefined) return undefined
  const { coefficients, inverse, logDeterminant, degreesOfFreedom, sumOfSquares } = solved
  return {
    coefficients,
    covariance: inverse.map((value) => value * variance),
    variance,
    degreesOfFreedom,
    logLikelihood:
      (products.stretches / 2) * Math.log(1 - correlation * correlation) -
      logDeterminant / 2 -
      (degreesOfFreedom / 2) * Math.log(sumOfSquares),
  }
}

interface Solution {
  readonly coefficients: Float64Array
  readonly inverse: Float64Array
  readonly logDeterminant: number
  readonly degreesOfFreedom: number
  readonly sumOfSquares: number
}

/** Variance of the response about its level: where the rounds that weigh beliefs begin. */
function flatVariance(products: LaggedProducts, normal: Float64Array): number {
  const n = products.size
  const level = normal[n - 1] / normal[0]
  return Math.max((normal[n * n - 1] - level * normal[n - 1]) / products.rows, Number.MIN_VALUE)
}

function solve(
  normal: Float64Array,
  size: number,
  { beliefs, variance, rows }: { beliefs: readonly (PriorBelief | undefined)[]; variance: number; rows: number },
): Solution | undefined {
  const n = size + 1
  const matrix = new Float64Array(size * size)
  const right = new Float64Array(size)
  for (let a = 0; a < size; a++) {
    right[a] = normal[a * n + size]
    for (let b = 0; b < size; b++) matrix[a * size + b] = normal[a * n + b]
  }
  const weights = new Float64Array(size)
  for (let a = 0; a < size; a++) {
    const belief = beliefs[a]
    if (belief === undefined) continue
    weights[a] = variance / (belief.deviation * belief.deviation)
    matrix[a * size + a] += weights[a]
    right[a] += weights[a] * belief.mean
  }
  const inverted = invertSymmetric(matrix, size)
  if (inverted === undefined) return undefined
  const coefficients = new Float64Array(size)
  let byBelief = 0
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) coefficients[a] += inverted.inverse[a * size + b] * right[b]
    byBelief += weights[a] * inverted.inverse[a * size + a]
  }
  return {
    coefficients,
    inverse: inverted.inverse,
    logDeterminant: inverted.logDeterminant,
    degreesOfFreedom: rows - size + byBelief,
    sumOfSquares: residualSquares(normal, coefficients),
  }
}

/** yᵀy − 2βᵀXᵀy + βᵀXᵀXβ, never below zero by rounding. */
function residualSquares(normal: Float64Array, coefficients: Float64Array): number {
  const size = coefficients.length
  const n = size + 1
  let sum = normal[n * n - 1]
  for (let a = 0; a < size; a++) {
    let inner = -2 * normal[a * n + size]
    for (let b = 0; b < size; b++) inner += normal[a * n + b] * coefficients[b]
    sum += coefficients[a] * inner
  }
  return Math.max(sum, Number.EPSILON * normal[n * n - 1], Number.MIN_VALUE)
}
