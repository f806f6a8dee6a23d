import type { StepResult } from './stepResult.ts'

/** Tangential − µ·force over the mean force, less the level and turn terms of the fit. */
export function residualOf(step: StepResult, orders: readonly number[]): Float64Array {
  const { rows, from, estimate, products } = step
  if (estimate === undefined || products === undefined) return new Float64Array(0)
  const columns = orders.flatMap((order) => {
    const at = 2 * rows.orders.indexOf(order)
    return [rows.turnColumns[at], rows.turnColumns[at + 1]]
  })
  const out = new Float64Array(rows.force.length - from)
  for (let i = 0; i < out.length; i++) {
    const row = from + i
    let value = (rows.tangential[row] - estimate.friction * rows.force[row]) / products.turnForce
    for (let k = 0; k < columns.length; k++) value -= estimate.coefficients[1 + k] * columns[k][row]
    out[i] = value - estimate.coefficients[0]
  }
  return out
}
