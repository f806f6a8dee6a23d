/** A number that a curve has, in the scale in which its interval is made (mostly a logarithm). */
export interface CurveQuantity {
  value(parameters: Float64Array): number
  /** Writes the gradient by the inner parameters. */
  gradient(parameters: Float64Array, out: Float64Array): void
}

/** offset + Σ weight · parameter. */
export function linearQuantity(weights: Float64Array, offset = 0): CurveQuantity {
  return {
    value: (parameters) => parameters.reduce((sum, p, j) => sum + weights[j] * p, offset),
    gradient: (_, out) => out.set(weights),
  }
}

/** Any smooth function of the parameters, differentiated by central differences. */
export function smoothQuantity(value: (parameters: Float64Array) => number): CurveQuantity {
  return {
    value,
    gradient(parameters, out) {
      const moved = parameters.slice()
      for (let j = 0; j < parameters.length; j++) {
        const step = 1e-5 * Math.max(1, Math.abs(parameters[j]))
        moved[j] = parameters[j] + step
        const above = value(moved)
        moved[j] = parameters[j] - step
        out[j] = (above - value(moved)) / (2 * step)
        moved[j] = parameters[j]
      }
    },
  }
}
