import { invertSymmetric } from '../numeric/index.ts'
import type { MixedProblem } from './mixedProblem.ts'
import { type RemlState, remlState } from './remlState.ts'

/** A linear combination of the fixed coefficients. */
export interface MixedContrast {
  readonly value: number
  readonly standardError: number
  /** By Satterthwaite; exact in balanced data. */
  readonly degreesOfFreedom: number
}

/** A fitted mixed model. No contrast may be shown without a look at `end`. */
export interface MixedFit {
  readonly coefficients: readonly number[]
  /** Variance of each cause, from zero up, in the order in which they were given. */
  readonly variances: readonly number[]
  readonly residualVariance: number
  /** −2 times the restricted log-likelihood, constants included. */
  readonly criterion: number
  readonly end: 'converged' | 'stepLimit'
  readonly iterations: number
  contrast(weights: readonly number[]): MixedContrast
}

/** Most rounds of scoring; twenty are usual. */
const mostRounds = 500

/**
 * Linear mixed model with independent random causes by restricted maximum likelihood (Patterson & Thompson 1971, Biometrika
 * 58:545): Fisher scoring with halved steps, variances held at zero or above. Degrees of freedom of contrasts by Satterthwaite
 * from the expected information (Giesbrecht & Burns 1985, Biometrics 41:477). Throws RangeError for data that leave no residual.
 */
export function mixedModel(problem: MixedProblem): MixedFit {
  checkProblem(problem)
  let state = remlState(problem, startOf(problem))
  for (let iterations = 1; iterations <= mostRounds; iterations++) {
    const next = improved(problem, state)
    const gain = state.criterion - (next?.criterion ?? state.criterion)
    if (next !== undefined) state = next
    if (!(gain > 1e-11 * (1 + Math.abs(state.criterion)))) return fitOf(state, 'converged', iterations)
  }
  return fitOf(state, 'stepLimit', mostRounds)
}

/** All variances alike, of the size of the scatter about the fixed part. */
function startOf({ values, design, causes }: MixedProblem): number[] {
  const none = remlState({ values, design, causes: [] }, [1])
  const variance = none.squares / (values.length - design[0].length)
  if (!(variance > 0)) throw new RangeError('a mixed model needs values that scatter, got none that do')
  return Array.from({ length: causes.length + 1 }, () => variance / (causes.length + 1))
}

/** One step of scoring, halved until the criterion falls; undefined where it falls no more. */
function improved(problem: MixedProblem, state: RemlState): RemlState | undefined {
  const step = scoringStep(state)
  for (let share = 1; share > 1e-6; share /= 2) {
    const tried = state.variances.map((variance, k) =>
      Math.max(k === state.residual ? 1e-12 * variance : 0, variance + share * step[k]),
    )
    const next = remlState(problem, tried)
    if (next.criterion < state.criterion) return next
  }
  return undefined
}

/** Information⁻¹ × score over the variances that are above zero or pushed up from it. */
function scoringStep({ variances, score, information, residual }: RemlState): number[] {
  const size = variances.length
  const free = variances.map((variance, k) => k === residual || variance > 0 || score[k] > 0)
  const places = free.flatMap((is, k) => (is ? [k] : []))
  const inverse = inverseOver(information, size, places)
  const step = new Array<number>(size).fill(0)
  for (const [a, k] of places.entries()) {
    for (const [b, l] of places.entries()) step[k] += inverse[a * places.length + b] * score[l]
  }
  return step
}

function inverseOver(matrix: Float64Array, size: number, places: readonly number[]): Float64Array {
  const part = Float64Array.from(places.flatMap((k) => places.map((l) => matrix[k * size + l])))
  const inverted = invertSymmetric(part, places.length)
  if (inverted === undefined)
    throw new RangeError('causes of scatter must differ from each other and from the residual')
  return inverted.inverse
}

function fitOf(state: RemlState, end: MixedFit['end'], iterations: number): MixedFit {
  return {
    coefficients: [...state.coefficients],
    variances: state.variances.slice(0, state.residual),
    residualVariance: state.variances[state.residual],
    criterion: state.criterion,
    ...{ end, iterations },
    contrast: (weights) => contrastOf(state, weights),
  }
}

function contrastOf(state: RemlState, weights: readonly number[]): MixedContrast {
  const { coefficients, covariance, slopes, information, variances, residual } = state
  if (weights.length !== coefficients.length) {
    throw new RangeError(`a contrast needs ${coefficients.length} weights, got ${weights.length}`)
  }
  const along = (matrix: Float64Array): number =>
    weights.reduce(
      (sum, w, a) => sum + w * weights.reduce((row, v, b) => row + v * matrix[a * weights.length + b], 0),
      0,
    )
  const variance = along(covariance)
  // A variance at zero is at its bound: it has no scatter of its own to tell.
  const places = variances.flatMap((value, k) => (k === residual || value > 0 ? [k] : []))
  const inverse = inverseOver(information, variances.length, places)
  const gradient = places.map((k) => along(slopes[k]))
  let spread = 0
  for (const [a, g] of gradient.entries()) {
    for (const [b, h] of gradient.entries()) spread += g * h * inverse[a * places.length + b]
  }
  return {
    value: weights.reduce((sum, w, a) => sum + w * coefficients[a], 0),
    standardError: Math.sqrt(variance),
    degreesOfFreedom: (2 * variance * variance) / spread,
  }
}

function checkProblem({ values, design, causes }: MixedProblem): void {
  const columns = design[0]?.length ?? 0
  if (!(values.length > columns && columns >= 1 && design.length === values.length)) {
    throw new RangeError(`a mixed model needs more values than coefficients, got ${values.length} and ${columns}`)
  }
  for (const { name, levels } of causes) {
    if (!(levels.length === values.length && new Set(levels).size < values.length && new Set(levels).size > 1)) {
      throw new RangeError(`${name} needs a level for each value, two at least, one of them twice`)
    }
  }
}
