import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { formulaIn, type ReadFormula } from '../../../core/quantity/index.ts'
import {
  comparePropagations,
  type Distribution,
  drawInputs,
  jointCovariance,
  type LinearResult,
  type MeasurementModel,
  type MonteCarloResult,
  type PropagationComparison,
  propagateLinear,
  propagateMonteCarlo,
} from '../../../core/stats/judging/index.ts'
import { done, failed, type Outcome, type Problem } from '../../../core/terms/index.ts'
import { type OutputQuantity, readModel, type UncertaintyModel } from '../../../io/uncertainty/index.ts'
import { fileProblem } from '../../fileProblem.ts'
import { causeDistribution, type RecordPart, recordPart } from './recordPart.ts'

/** How a model is propagated. */
export interface PropagateOptions {
  readonly seed: number
  readonly mostTrials: number
}

/** One result of a model, all numbers in the SI unit of its formula. */
export interface DerivedQuantity {
  readonly output: OutputQuantity
  readonly formula: ReadFormula
  readonly linear: LinearResult
  readonly monteCarlo: MonteCarloResult
  readonly comparison: PropagationComparison
}

/** A model with all that comes out of it. */
export interface PropagatedModel {
  readonly file: string
  readonly model: UncertaintyModel
  /** Inputs as the methods saw them: the quantities, and the causes behind those that come from records. */
  readonly inputs: readonly string[]
  readonly derived: readonly DerivedQuantity[]
  /** Correlations of the results, row by row. */
  readonly correlations: readonly number[]
  readonly options: PropagateOptions
}

/** Reads a model and propagates its uncertainties by both methods. */
export async function propagateModel(file: string, options: PropagateOptions): Promise<Outcome<PropagatedModel>> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const read = readModel(text, basename(file))
  if (!read.ok) return read
  const wired = wire(read.value, file)
  if (!wired.ok) return wired
  const { inputs, names, evaluateWith, correlations } = wired.value
  const drawn = drawInputs(inputs, correlations)
  if (!drawn.ok) {
    const which = drawn.fault.why === 'notNormal' ? names[drawn.fault.input] : ''
    return failed(cannotDraw(which, basename(file)))
  }
  const { outputs, coverage, digits } = read.value
  const evaluations: ((values: ArrayLike<number>) => number)[] = []
  const derived: DerivedQuantity[] = []
  for (const output of outputs) {
    const formula = formulaOf(read.value, output)
    const evaluate = evaluateWith(formula)
    const model: MeasurementModel = { inputs, evaluate, correlations }
    const linear = propagateLinear(model, coverage)
    if (!Number.isFinite(linear.estimate) || !Number.isFinite(linear.standardUncertainty)) {
      return failed(noNumber(output, basename(file)))
    }
    const monteCarlo = propagateMonteCarlo(
      evaluate,
      { draw: drawn.draw, count: inputs.length },
      { ...options, coverage, digits },
    )
    evaluations.push(evaluate)
    derived.push({ output, formula, linear, monteCarlo, comparison: comparePropagations(linear, monteCarlo, digits) })
  }
  const covariance = jointCovariance(evaluations, { inputs, correlations })
  return done({
    ...{ file: basename(file), model: read.value, inputs: names, derived, options },
    correlations: correlationsOf(covariance, derived.length),
  })
}

/** The model in the form that both methods take, quantities from records split into their causes. */
interface Wired {
  readonly inputs: readonly Distribution[]
  readonly names: readonly string[]
  readonly correlations: { first: number; second: number; coefficient: number }[]
  readonly evaluateWith: (formula: ReadFormula) => (values: ArrayLike<number>) => number
}

function wire(model: UncertaintyModel, file: string): Outcome<Wired> {
  const inputs: Distribution[] = []
  const names: string[] = []
  const problems: Problem[] = []
  const places: (number | { readonly part: RecordPart; readonly causes: readonly number[] })[] = []
  const place = (name: string, distribution: Distribution): number => {
    inputs.push(distribution)
    return names.push(name) - 1
  }
  for (const { name, known, place: at } of model.inputs) {
    if (known.as === 'distribution') {
      places.push(place(name, known.distribution))
      continue
    }
    const part = recordPart({ name, ...known, place: at }, file)
    if (!part.ok) {
      problems.push(...part.problems)
      continue
    }
    const causes = part.value.causes.map((cause) => {
      const there = names.indexOf(cause.name)
      return there >= 0 ? there : place(cause.name, causeDistribution)
    })
    places.push({ part: part.value, causes })
  }
  if (problems.length > 0) return failed(...problems)
  const from = (name: string): number => {
    const at = places[model.inputs.findIndex((input) => input.name === name)]
    return typeof at === 'number' ? at : -1
  }
  const pairs = model.correlations.map(({ first, second, coefficient }) => ({
    first: from(first),
    second: from(second),
    coefficient,
  }))
  const odd = pairs.findIndex(({ first, second }) => first < 0 || second < 0)
  if (odd >= 0) return failed(correlatedRecord(model.correlations[odd].place))
  return done({ inputs, names, correlations: pairs, evaluateWith: (formula) => evaluator(formula, places) })
}

function evaluator(
  formula: ReadFormula,
  places: readonly (number | { readonly part: RecordPart; readonly causes: readonly number[] })[],
) {
  const values = new Float64Array(places.length)
  return (drawn: ArrayLike<number>): number => {
    for (let i = 0; i < places.length; i++) {
      const at = places[i]
      if (typeof at === 'number') values[i] = drawn[at]
      else {
        let shift = 1
        for (let c = 0; c < at.causes.length; c++) shift += at.part.causes[c].size * drawn[at.causes[c]]
        values[i] = at.part.friction * shift
      }
    }
    return formula.evaluate(values)
  }
}

/** The reader has checked it already. */
function formulaOf(model: UncertaintyModel, { formula, name }: OutputQuantity): ReadFormula {
  const read = formulaIn(
    formula,
    model.inputs.map((input) => ({ name: input.name, exponents: input.unit.exponents })),
  )
  if (!read.ok) throw new RangeError(`the formula of ${name} was read before, and now it is: ${read.fault.what}`)
  return read.formula
}

function correlationsOf(covariance: Float64Array, count: number): readonly number[] {
  const of = (a: number, b: number): number => covariance[a * count + b]
  return Array.from({ length: count * count }, (_, i) => {
    const [a, b] = [Math.floor(i / count), i % count]
    const size = Math.sqrt(of(a, a) * of(b, b))
    return a === b ? 1 : size > 0 ? of(a, b) / size : 0
  })
}

const cannotDraw = (which: string, file: string): Problem => ({
  kind: 'modelCorrelation',
  class: 'badInput',
  place: { file },
  what:
    which === ''
      ? 'No quantities can have these correlations together.'
      : `${which} is correlated, and its distribution is not normal.`,
  mend:
    which === ''
      ? 'Check the coefficients against each other.'
      : 'Give it a standardUncertainty without a shape, or take the correlation out.',
})

const correlatedRecord = (place: Problem['place']): Problem => ({
  kind: 'modelCorrelation',
  class: 'badInput',
  place,
  what: 'What records share is known from their results.',
  mend: 'Take the correlation out.',
})

const noNumber = ({ name, place }: OutputQuantity, file: string): Problem => ({
  kind: 'modelFormula',
  class: 'badInput',
  place: { file, ...place },
  what: `${name} is no finite number at the values of its quantities.`,
  mend: 'Look for a division by zero, or a root or logarithm of what is below it.',
})
