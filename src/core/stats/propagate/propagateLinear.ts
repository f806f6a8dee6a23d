import { studentTQuantile } from '../studentT.ts'
import { welchSatterthwaite } from '../uncertaintyBudget.ts'
import { correlationMatrix, type MeasurementModel } from './model.ts'
import { secondOrder } from './secondOrder.ts'
import { sensitivitiesOf } from './sensitivities.ts'
import { standardOf } from './standardOf.ts'

/** What one input makes of a result's uncertainty. */
export interface Contribution {
  readonly sensitivity: number
  readonly standardUncertainty: number
  /** |c|·u, in the unit of the result. */
  readonly size: number
  /** Of the variance, without correlations: the sizes squared over their sum. */
  readonly share: number
}

/** A result by the law of propagation of uncertainty. */
export interface LinearResult {
  readonly estimate: number
  readonly standardUncertainty: number
  readonly degreesOfFreedom: number
  readonly coverageFactor: number
  readonly low: number
  readonly high: number
  readonly contributions: readonly Contribution[]
  /** The same with the terms of next higher order; null where inputs are correlated, for which the formula is not made. */
  readonly second: { readonly standardUncertainty: number; readonly shift: number } | null
}

/**
 * Law of propagation of uncertainty (JCGM 100:2008, 5.1 and 5.2), effective degrees of freedom by Welch and Satterthwaite (G.4)
 * rounded down, coverage factor from t. The degrees of freedom of correlated inputs are those of the formula for uncorrelated
 * ones, as nothing better is standard.
 */
export function propagateLinear(model: MeasurementModel, coverage = 0.95): LinearResult {
  if (!(coverage > 0 && coverage < 1)) throw new RangeError(`coverage must be between 0 and 1, got ${coverage}`)
  const { correlations = [], evaluate } = model
  const inputs = model.inputs.map(standardOf)
  const sensitivities = model.sensitivities ?? sensitivitiesOf(evaluate, inputs)
  if (sensitivities.length !== inputs.length) {
    throw new RangeError(`${inputs.length} inputs need as many sensitivities, got ${sensitivities.length}`)
  }
  const signed = inputs.map(({ standardUncertainty }, i) => sensitivities[i] * standardUncertainty)
  const matrix = correlationMatrix(inputs.length, correlations)
  const variance = quadraticForm(matrix, signed)
  const sum = signed.reduce((total, part) => total + part * part, 0)
  const standardUncertainty = Math.sqrt(Math.max(0, variance))
  const degreesOfFreedom = effectiveFreedom(
    inputs.map(({ degreesOfFreedom: freedom }, i) => ({
      standardUncertainty: Math.abs(signed[i]),
      degreesOfFreedom: freedom,
    })),
    standardUncertainty,
  )
  const whole = Number.isFinite(degreesOfFreedom) ? Math.max(1, Math.floor(degreesOfFreedom + 1e-9)) : degreesOfFreedom
  const coverageFactor = studentTQuantile((1 + coverage) / 2, whole)
  const estimate = evaluate(inputs.map((input) => input.estimate))
  return {
    estimate,
    standardUncertainty,
    degreesOfFreedom,
    coverageFactor,
    low: estimate - coverageFactor * standardUncertainty,
    high: estimate + coverageFactor * standardUncertainty,
    contributions: inputs.map((input, i) => ({
      sensitivity: sensitivities[i],
      standardUncertainty: input.standardUncertainty,
      size: Math.abs(signed[i]),
      share: sum > 0 ? signed[i] ** 2 / sum : 0,
    })),
    second: correlations.length > 0 ? null : withSecondOrder(model, inputs, variance),
  }
}

/** ν_eff against the uncertainty as it came out, so that correlation counts on top. */
function effectiveFreedom(parts: Parameters<typeof welchSatterthwaite>[0], combined: number): number {
  // A formula that is no number here has no degrees of freedom either; who looks at the estimate sees it.
  if (!Number.isFinite(combined)) return Number.POSITIVE_INFINITY
  const free = welchSatterthwaite(parts)
  if (!Number.isFinite(free)) return free
  const plain = Math.hypot(...parts.map(({ standardUncertainty }) => standardUncertainty))
  return free * (combined / plain) ** 4
}

const quadraticForm = (matrix: Float64Array, x: readonly number[]): number =>
  x.reduce((total, a, i) => total + x.reduce((row, b, j) => row + a * b * matrix[i * x.length + j], 0), 0)

function withSecondOrder(
  { evaluate }: MeasurementModel,
  inputs: Parameters<typeof secondOrder>[1],
  variance: number,
): LinearResult['second'] {
  const more = secondOrder(evaluate, inputs)
  return { standardUncertainty: Math.sqrt(Math.max(0, variance + more.variance)), shift: more.shift }
}

/**
 * Covariance of several results of the same inputs, row by row: J V Jᵀ (JCGM 102:2011, 6.2). It holds what two results have
 * in common, which the uncertainties alone do not tell.
 */
export function jointCovariance(
  models: readonly ((values: ArrayLike<number>) => number)[],
  { inputs, correlations = [] }: Pick<MeasurementModel, 'inputs' | 'correlations'>,
): Float64Array {
  const standard = inputs.map(standardOf)
  const matrix = correlationMatrix(inputs.length, correlations)
  const rows = models.map((evaluate) =>
    sensitivitiesOf(evaluate, standard).map((slope, i) => slope * standard[i].standardUncertainty),
  )
  return Float64Array.from({ length: models.length ** 2 }, (_, place) => {
    const [a, b] = [rows[Math.floor(place / models.length)], rows[place % models.length]]
    let sum = 0
    for (let i = 0; i < a.length; i++) for (let j = 0; j < b.length; j++) sum += a[i] * b[j] * matrix[i * a.length + j]
    return sum
  })
}
