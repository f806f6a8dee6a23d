import { type LaggedProducts, laggedProducts } from './laggedProducts.ts'
import { type Combination, mapProducts } from './mapProducts.ts'
import type { StepRows } from './stepRows.ts'

/**
 * Products of one step: level, turn columns, axial force less its mean, and tangential force less the plain friction
 * times the axial force, the last two over the turn's mean force. Left in, those levels would cost the products of quiet
 * readings half their digits.
 */
export interface StepProducts {
  readonly products: LaggedProducts
  readonly orders: readonly number[]
  /** Mean axial force over a whole turn, N. */
  readonly turnForce: number
  /** Mean axial force over the rows, as a share of that. */
  readonly meanForce: number
  /** Ratio of the plain means: where the fit begins. */
  readonly plainFriction: number
  readonly turns: number
  readonly rows: number
}

/** Ripple of the axial force as a share of its mean, known from the record. */
export interface ForceRipple {
  readonly order: number
  readonly cosine: number
  readonly sine: number
}

/**
 * @param from first row of `rows` that is used
 * @param ripple turns the mean force over an arc into that over a whole turn
 */
export function stepProducts(rows: StepRows, from: number, ripple: readonly ForceRipple[]): StepProducts {
  const force = rows.force.subarray(from)
  const tangential = rows.tangential.subarray(from)
  const meanForce = mean(force)
  const onArc = ripple.reduce((sum, { order, cosine, sine }) => {
    const at = 2 * rows.orders.indexOf(order)
    return (
      sum + cosine * mean(rows.turnColumns[at].subarray(from)) + sine * mean(rows.turnColumns[at + 1].subarray(from))
    )
  }, 1)
  const turnForce = meanForce / onArc
  const plainFriction = mean(tangential) / meanForce
  const products = laggedProducts([
    new Float64Array(force.length).fill(1),
    ...rows.turnColumns.map((column) => column.subarray(from)),
    force.map((value) => (value - meanForce) / turnForce),
    tangential.map((value, i) => (value - plainFriction * force[i]) / turnForce),
  ])
  const last = rows.angle.length - 1
  return {
    products,
    orders: rows.orders,
    turnForce,
    meanForce: meanForce / turnForce,
    plainFriction,
    turns: turnsOf(rows.angle[from], rows.angle[last], rows.angle.length - from),
    rows: force.length,
  }
}

/** The last row stands for an interval as the others do, so n rows span n/(n−1) of the angle between the ends. */
function turnsOf(first: number, last: number, rows: number): number {
  return rows < 2 ? 0 : (Math.abs(last - first) / (2 * Math.PI)) * (rows / (rows - 1))
}

/** Regression of tangential − µ·force on level and the chosen turn orders. */
export function frictionRegression(step: StepProducts, friction: number, orders: readonly number[]): LaggedProducts {
  const { size } = step.products
  const further = friction - step.plainFriction
  return mapProducts(step.products, [
    ...designColumns(step, orders),
    [
      [size - 1, 1],
      [size - 2, -further],
      [0, -further * step.meanForce],
    ],
  ])
}

/** Regression of the force over its mean, less that mean, on level and the chosen turn orders. */
export function forceRegression(step: StepProducts, orders: readonly number[]): LaggedProducts {
  return mapProducts(step.products, [...designColumns(step, orders), [[step.products.size - 2, 1]]])
}

function designColumns(step: StepProducts, orders: readonly number[]): Combination[] {
  const turn = orders.flatMap((order): Combination[] => {
    const at = 1 + 2 * step.orders.indexOf(order)
    return [[[at, 1]], [[at + 1, 1]]]
  })
  return [[[0, 1]], ...turn]
}

function mean(values: Float64Array): number {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += values[i]
  return sum / values.length
}
