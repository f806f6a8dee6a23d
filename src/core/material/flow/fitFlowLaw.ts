import { type Correlation, done, type FitEnd, failed, type Outcome, type Ratio } from '../../terms/index.ts'
import type { Span } from '../span.ts'
import { type BoxFit, type BoxProblem, boxFit } from './boxFit.ts'
import { curveExtent } from './curveExtent.ts'
import { flowCurveProblems } from './flowCurveProblems.ts'
import { type FlowParameters, flowLaws } from './flowLaw.ts'
import type { FlowPoint } from './flowPoint.ts'
import type { FlowLaw, FlowLawName } from './shape.ts'

/** One fitted parameter in SI. */
export interface FlowEstimate {
  readonly name: string
  readonly unit: string
  readonly value: number
  /** Standard uncertainty from the scatter of the points; null at a bound and where it cannot be told. */
  readonly uncertainty: number | null
}

/** A flow law fitted to a curve. Look at `end` before use. */
export interface FlowFit {
  readonly law: FlowLawName
  readonly source: string
  readonly end: FitEnd
  readonly estimates: readonly FlowEstimate[]
  readonly parameters: FlowParameters
  /** Of ln η: the usual relative distance of a point from the curve; null without degrees of freedom. */
  readonly scatter: Ratio | null
  /** Sum over points of squared distances in ln η, over their relative uncertainties where these are given. */
  readonly sumOfSquares: number
  readonly degreesOfFreedom: number
  /** Rates that were measured, 1/s. Beyond, a law is a guess. */
  readonly shearRate: Span
  /** Corrected Akaike criterion; lower is better, on one curve only. Infinite with too few points. */
  readonly criterion: number
  /** Correlations of parameters above 0.9 in size. */
  readonly correlations: readonly Correlation[]
}

/**
 * Fits a flow law to a measured curve: least squares of ln η from several starts in a box, so that each decade counts alike.
 * Bad points come back as problems, all at once.
 */
export function fitFlowLaw(points: readonly FlowPoint[], name: FlowLawName): Outcome<FlowFit> {
  const law = flowLaws[name]
  const problems = flowCurveProblems(points, Math.max(2, law.parameters.length + 1))
  if (problems.length > 0) return failed(...problems)
  const extent = curveExtent(points)
  const bounds = law.bounds(extent)
  const problem = boxProblem(law, bounds, points)
  const inner = (values: readonly number[]): number[] => values.map((value, j) => toInner(law, j, value))
  const fits = law.starts(extent).map((start) => boxFit(problem, inner(start)))
  return done(described(name, points, best(fits)))
}

/** Log parameters are moved by their logarithm, so that steps are shares and stay positive. */
const toInner = (law: FlowLaw, j: number, value: number): number =>
  law.parameters[j].moves === 'logarithm' ? Math.log(value) : value
const fromInner = (law: FlowLaw, j: number, value: number): number =>
  law.parameters[j].moves === 'logarithm' ? Math.exp(value) : value

const best = (fits: readonly BoxFit[]): BoxFit =>
  fits.reduce((least, fit) => (fit.sumOfSquares < least.sumOfSquares ? fit : least))

function boxProblem(law: FlowLaw, bounds: readonly Span[], points: readonly FlowPoint[]): BoxProblem {
  const rows = points.length
  const count = law.parameters.length
  const values = new Float64Array(count)
  const slopes = new Float64Array(count)
  return {
    names: law.parameters.map(({ name }) => name),
    box: bounds.map(({ low, high }, j) => ({ low: toInner(law, j, low), high: toInner(law, j, high) })),
    rows,
    at: (place, residuals, jacobian) => {
      for (let j = 0; j < count; j++) values[j] = fromInner(law, j, place[j])
      for (const [i, { shearRate, viscosity, relativeUncertainty = 1 }] of points.entries()) {
        const model = law.viscosity(values, shearRate)
        residuals[i] = Math.log(model / viscosity) / relativeUncertainty
        law.slopes(values, shearRate, slopes)
        for (let j = 0; j < count; j++) {
          const stretch = law.parameters[j].moves === 'logarithm' ? values[j] : 1
          jacobian[j * rows + i] = (slopes[j] * stretch) / (model * relativeUncertainty)
        }
      }
    },
  }
}

function described(name: FlowLawName, points: readonly FlowPoint[], fit: BoxFit): FlowFit {
  const law = flowLaws[name]
  const degreesOfFreedom = points.length - fit.free.length
  const variance = degreesOfFreedom > 0 ? fit.sumOfSquares / degreesOfFreedom : null
  const count = law.parameters.length
  const told = fit.end.why === 'converged' || fit.end.why === 'atBound'
  const estimates = law.parameters.map(({ name, unit, moves }, j) => {
    const value = fromInner(law, j, fit.place[j])
    const known = told && variance !== null && fit.free.includes(j)
    const spread = known ? Math.sqrt(variance * fit.inverseGram[j * count + j]) : null
    return { name, unit, value, uncertainty: spread === null ? null : spread * (moves === 'logarithm' ? value : 1) }
  })
  return {
    law: name,
    source: law.source,
    end: fit.end.why === 'atBound' ? { ...fit.end, bound: boundOf(law, fit.end) } : fit.end,
    estimates,
    parameters: Object.fromEntries(estimates.map(({ name, value }) => [name, value])),
    scatter:
      degreesOfFreedom > 0
        ? scatterOf(points, { parameters: estimates.map(({ value }) => value), law, degreesOfFreedom })
        : null,
    sumOfSquares: fit.sumOfSquares,
    degreesOfFreedom,
    shearRate: curveExtent(points).shearRate,
    criterion: criterionOf(points, fit),
    correlations: told ? correlationsOf(law, fit) : [],
  }
}

/** A bound as people know it, not as the fit moves it. */
const boundOf = (law: FlowLaw, { parameter, bound }: Extract<FitEnd, { why: 'atBound' }>): number =>
  fromInner(
    law,
    law.parameters.findIndex(({ name }) => name === parameter),
    bound,
  )

interface Fitted {
  readonly law: FlowLaw
  readonly parameters: readonly number[]
  readonly degreesOfFreedom: number
}

/** Root of the mean square of ln η against the curve, per degree of freedom, without weights. */
function scatterOf(points: readonly FlowPoint[], { law, parameters, degreesOfFreedom }: Fitted): Ratio {
  const sum = points.reduce(
    (sum, { shearRate, viscosity }) => sum + Math.log(law.viscosity(parameters, shearRate) / viscosity) ** 2,
    0,
  )
  return Math.sqrt(sum / degreesOfFreedom)
}

/** AICc: Hurvich & Tsai 1989, Biometrika 76:297; the variance counts as a parameter, bounds do not lessen the count. */
function criterionOf(points: readonly FlowPoint[], fit: BoxFit): number {
  const n = points.length
  const k = fit.place.length + 1
  if (!(n > k + 1)) return Number.POSITIVE_INFINITY
  // Exact data leave nothing to judge by; the least that doubles can tell keeps the logarithm finite.
  const mean = Math.max(fit.sumOfSquares / n, 1e-30)
  return n * Math.log(mean) + 2 * k + (2 * k * (k + 1)) / (n - k - 1)
}

function correlationsOf(law: FlowLaw, { free, inverseGram }: BoxFit): readonly Correlation[] {
  const size = law.parameters.length
  const entry = (a: number, b: number): number => inverseGram[a * size + b]
  return free.flatMap((a) =>
    free
      .filter((b) => b > a)
      .map((b) => ({
        first: law.parameters[a].name,
        second: law.parameters[b].name,
        value: entry(a, b) / Math.sqrt(entry(a, a) * entry(b, b)),
      }))
      .filter(({ value }) => Math.abs(value) > 0.9),
  )
}
