import { cholesky, invertLower } from '../../numeric/index.ts'
import { type LaggedProducts, whitened } from './laggedProducts.ts'

/** What is known of a coefficient before the fit: normal, in the units of the response. */
export interface PriorBelief {
  readonly mean: number
  readonly deviation: number
}

/** What is known of each coefficient; undefined for nothing. */
export type Beliefs = readonly (PriorBelief | undefined)[]

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
  beliefs: Beliefs = [],
): CorrelatedFit | undefined {
  const fitting = new Fitting(products, beliefs)
  if (!fitting.at(correlation)) return undefined
  const { coefficients, variance, degreesOfFreedom, logLikelihood } = fitting
  return { coefficients, covariance: fitting.covariance(), variance, degreesOfFreedom, logLikelihood }
}

/** `logLikelihood` alone, for a search over correlations; NaN where the columns cannot be told apart. */
export function correlationLikelihood(
  products: LaggedProducts,
  beliefs: Beliefs = [],
): (correlation: number) => number {
  const fitting = new Fitting(products, beliefs)
  return (correlation) => (fitting.at(correlation) ? fitting.logLikelihood : Number.NaN)
}

/** Rounds in which the variance that weighs beliefs settles. */
const beliefRounds = 4

/** One regression at many correlations. All of them use the same arrays: a search makes a thousand fits for each record. */
class Fitting {
  readonly coefficients: Float64Array
  variance = Number.NaN
  degreesOfFreedom = Number.NaN
  logLikelihood = Number.NaN
  readonly #products: LaggedProducts
  readonly #beliefs: Beliefs
  readonly #believes: boolean
  readonly #normal: Float64Array
  readonly #matrix: Float64Array
  readonly #factor: Float64Array
  /** Inverse of the factor. */
  readonly #lower: Float64Array
  readonly #right: Float64Array
  readonly #weights: Float64Array
  #sumOfSquares = Number.NaN

  constructor(products: LaggedProducts, beliefs: Beliefs) {
    const size = products.size - 1
    const square = () => new Float64Array(size * size)
    this.#products = products
    this.#beliefs = beliefs
    this.#believes = beliefs.some((belief) => belief !== undefined)
    this.#normal = new Float64Array(products.size * products.size)
    this.#matrix = square()
    this.#factor = square()
    this.#lower = square()
    this.#right = new Float64Array(size)
    this.#weights = new Float64Array(size)
    this.coefficients = new Float64Array(size)
  }

  /** False where the columns cannot be told apart. */
  at(correlation: number): boolean {
    if (!(Math.abs(correlation) < 1)) throw new RangeError(`correlation must lie between −1 and 1, got ${correlation}`)
    const { rows, stretches } = this.#products
    whitened(this.#products, correlation, this.#normal)
    this.variance = this.#believes ? this.#flatVariance() : 1
    for (let round = 0; round < (this.#believes ? beliefRounds : 1); round++) {
      this.#weigh()
      if (!this.#solve()) return false
      this.degreesOfFreedom = rows - this.coefficients.length + this.#shareOfBeliefs()
      this.variance = this.degreesOfFreedom > 0 ? this.#sumOfSquares / this.degreesOfFreedom : Number.NaN
    }
    this.logLikelihood =
      (stretches / 2) * Math.log(1 - correlation * correlation) -
      this.#halfLogDeterminant() -
      (this.degreesOfFreedom / 2) * Math.log(this.#sumOfSquares)
    return true
  }

  /** Of the fit made last. */
  covariance(): Float64Array {
    const size = this.coefficients.length
    const lower = this.#lower
    const out = new Float64Array(size * size)
    for (let a = 0; a < size; a++) {
      for (let b = 0; b <= a; b++) {
        let sum = 0
        for (let k = a; k < size; k++) sum += lower[k * size + a] * lower[k * size + b]
        out[a * size + b] = out[b * size + a] = sum * this.variance
      }
    }
    return out
  }

  /** Variance of the response about its level: where the rounds that weigh beliefs begin. */
  #flatVariance(): number {
    const { size, rows } = this.#products
    const normal = this.#normal
    const level = normal[size - 1] / normal[0]
    return Math.max((normal[size * size - 1] - level * normal[size - 1]) / rows, Number.MIN_VALUE)
  }

  /** Normal equations with the beliefs at their weights. */
  #weigh(): void {
    const size = this.coefficients.length
    const normal = this.#normal
    for (let a = 0; a < size; a++) {
      for (let b = 0; b <= a; b++) this.#matrix[a * size + b] = normal[a * (size + 1) + b]
      this.#right[a] = normal[a * (size + 1) + size]
      const belief = this.#beliefs[a]
      if (belief === undefined) continue
      this.#weights[a] = this.variance / (belief.deviation * belief.deviation)
      this.#matrix[a * size + a] += this.#weights[a]
      this.#right[a] += this.#weights[a] * belief.mean
    }
  }

  #solve(): boolean {
    const size = this.coefficients.length
    const right = this.#right
    if (cholesky(this.#matrix, size, this.#factor) === undefined) return false
    const lower = invertLower(this.#factor, size, this.#lower)
    // β = L⁻ᵀ(L⁻¹ r), the inner product in place from the last row up.
    for (let a = size - 1; a >= 0; a--) {
      let sum = 0
      for (let k = 0; k <= a; k++) sum += lower[a * size + k] * right[k]
      right[a] = sum
    }
    for (let a = 0; a < size; a++) {
      let sum = 0
      for (let k = a; k < size; k++) sum += lower[k * size + a] * right[k]
      this.coefficients[a] = sum
    }
    this.#sumOfSquares = this.#residualSquares()
    return true
  }

  /** Σ w·(A⁻¹)ᵢᵢ: how many coefficients the beliefs have fixed. */
  #shareOfBeliefs(): number {
    const size = this.coefficients.length
    let share = 0
    for (let a = 0; this.#believes && a < size; a++) {
      let diagonal = 0
      for (let k = a; k < size; k++) diagonal += this.#lower[k * size + a] ** 2
      share += this.#weights[a] * diagonal
    }
    return share
  }

  #halfLogDeterminant(): number {
    const size = this.coefficients.length
    let sum = 0
    for (let a = 0; a < size; a++) sum += Math.log(this.#factor[a * size + a])
    return sum
  }

  /** yᵀy − 2βᵀXᵀy + βᵀXᵀXβ, never below zero by rounding. */
  #residualSquares(): number {
    const { coefficients } = this
    const normal = this.#normal
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
}
