/**
 * A sum of squares to be made small: residuals of `rows` rows in named parameters, each inside its bounds (±Infinity for
 * none). Whoever scales the residuals by their standard uncertainties gets χ².
 */
export interface ResidualProblem {
  readonly rows: number
  readonly names: readonly string[]
  readonly lower: Float64Array
  readonly upper: Float64Array
  /**
   * Writes the residuals and, where `jacobian` is given, d residual_i / d parameter_j at j·rows + i. NaN or infinite
   * residuals mean that the parameters are outside the domain: the step is taken back.
   */
  evaluate(parameters: Float64Array, residuals: Float64Array, jacobian?: Float64Array): void
}
