import type { ResidualProblem } from './residualProblem.ts'

/** Small enough for a peak whose width is a hundredth of its place, large enough for eleven digits. */
const relativeStep = 1e-4

/**
 * The same problem with its Jacobian made by five-point central differences (Abramowitz & Stegun 1972, 25.3.6), about
 * eleven digits where the residuals are smooth. `sizes` gives the typical size of each parameter, for steps near zero. Steps
 * may leave the bounds by a few ten-thousandths of the parameter.
 */
export function withCentralDifferences(
  problem: Omit<ResidualProblem, 'evaluate'> & { evaluate(parameters: Float64Array, residuals: Float64Array): void },
  sizes: ArrayLike<number>,
): ResidualProblem {
  const { rows, names, lower, upper } = problem
  const at = new Float64Array(names.length)
  const moved = new Float64Array(rows)
  const differentiate = (j: number, jacobian: Float64Array): void => {
    const centre = at[j]
    const size = Math.abs(sizes[j]) || 1
    const step = relativeStep * (Math.abs(centre) > 1e-6 * size ? Math.abs(centre) : size)
    const column = jacobian.subarray(j * rows, (j + 1) * rows).fill(0)
    for (const [places, weight] of fivePoints) {
      at[j] = centre + places * step
      problem.evaluate(at, moved)
      for (let i = 0; i < rows; i++) column[i] += weight * moved[i]
    }
    at[j] = centre
    for (let i = 0; i < rows; i++) column[i] /= 12 * step
  }
  return {
    rows,
    names,
    lower,
    upper,
    evaluate(parameters, residuals, jacobian) {
      problem.evaluate(parameters, residuals)
      if (jacobian === undefined) return
      at.set(parameters)
      for (let j = 0; j < names.length; j++) differentiate(j, jacobian)
    },
  }
}

const fivePoints: readonly (readonly [number, number])[] = [
  [-2, 1],
  [-1, -8],
  [1, 8],
  [2, -1],
]
