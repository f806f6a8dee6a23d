import { findRoot, invertSymmetric } from '../numeric/index.ts'
import { chiSquaredQuantile } from './chiSquared.ts'
import type { MixedFit } from './mixedModel.ts'
import type { MixedProblem } from './mixedProblem.ts'
import { type RemlState, remlState } from './remlState.ts'

/** A standard deviation with its interval; `high` is null where the data do not bound it within thirty times. */
export interface DeviationInterval {
  readonly name: string
  readonly deviation: number
  readonly low: number
  readonly high: number | null
}

/** Scatter of values by its causes, and of all of them together. */
export interface ScatterIntervals {
  /** Causes in their order, then the residual. */
  readonly parts: readonly DeviationInterval[]
  /** Of a value at which all causes are fresh. */
  readonly total: DeviationInterval
  /** Of the total, by Satterthwaite. */
  readonly degreesOfFreedom: number
}

/**
 * Intervals of the standard deviations of a mixed model: of each part by its profile of the restricted likelihood (Patterson &
 * Thompson 1971; χ² with one degree of freedom), of their sum by χ² with the degrees of freedom 2T²/Var T that the expected
 * information gives (Satterthwaite 1946).
 */
export function varianceIntervals(
  problem: MixedProblem,
  fit: MixedFit,
  { coverage = 0.95, residualName = 'residual' }: { readonly coverage?: number; readonly residualName?: string } = {},
): ScatterIntervals {
  const best = [...fit.variances, fit.residualVariance]
  const names = [...problem.causes.map(({ name }) => name), residualName]
  const allowed = chiSquaredQuantile(coverage, 1)
  const { total, degreesOfFreedom } = totalOf(problem, best)
  const end = (p: number): number => Math.sqrt((degreesOfFreedom * total) / chiSquaredQuantile(p, degreesOfFreedom))
  return {
    parts: best.map((variance, k) => {
      const over = (held: number): number =>
        profiled(problem, best, { held: k, at: held }).criterion - fit.criterion - allowed
      return {
        name: names[k],
        deviation: Math.sqrt(variance),
        ...ends(over, variance, { scale: total, k, last: best.length - 1 }),
      }
    }),
    total: {
      name: 'all together',
      deviation: Math.sqrt(total),
      low: end((1 + coverage) / 2),
      high: end((1 - coverage) / 2),
    },
    degreesOfFreedom,
  }
}

/** Where the profile crosses what is allowed, below and above the estimate. */
function ends(
  over: (variance: number) => number,
  variance: number,
  { scale, k, last }: { readonly scale: number; readonly k: number; readonly last: number },
): Pick<DeviationInterval, 'low' | 'high'> {
  const least = 1e-6 * scale
  // Without a residual there is no likelihood, so its lowest end lies above zero.
  const lowest = k === last ? least : 0
  const inLog = (from: number, to: number): number =>
    Math.exp(findRoot((x) => over(Math.exp(x)), [Math.log(from), Math.log(to)], { tolerance: 1e-3 }).at)
  const low = variance <= least || over(lowest) <= 0 ? 0 : inLog(least, variance)
  const from = Math.max(variance, least)
  const most = 1e3 * scale
  let to = Math.max(4 * from, scale)
  while (over(to) < 0 && to < most) to *= 4
  return { low: Math.sqrt(low), high: over(to) < 0 ? null : Math.sqrt(inLog(from, to)) }
}

/** Sum of the variances and its degrees of freedom. A variance at zero is at its bound and tells no scatter of its own. */
function totalOf(problem: MixedProblem, variances: readonly number[]) {
  const { information, residual } = remlState(problem, variances)
  const size = variances.length
  const places = variances.flatMap((value, k) => (k === residual || value > 0 ? [k] : []))
  const part = Float64Array.from(places.flatMap((k) => places.map((l) => information[k * size + l])))
  const inverse = invertSymmetric(part, places.length)
  if (inverse === undefined) throw new RangeError('causes of scatter must differ from each other and from the residual')
  const total = variances.reduce((a, b) => a + b, 0)
  const variance = inverse.inverse.reduce((a, b) => a + b, 0)
  return { total, degreesOfFreedom: (2 * total * total) / variance }
}

const mostRounds = 60

/** The best likelihood with one variance held, by Fisher scoring over the others with halved steps. */
function profiled(
  problem: MixedProblem,
  start: readonly number[],
  { held, at }: { readonly held: number; readonly at: number },
): RemlState {
  const total = start.reduce((a, b) => a + b, 0)
  // From somewhat above zero, so that a part that was zero can take what the held one gives up.
  let state = remlState(
    problem,
    start.map((variance, k) => (k === held ? at : Math.max(variance, 0.02 * total))),
  )
  for (let round = 0; round < mostRounds; round++) {
    const next = scored(problem, state, { held, total })
    if (next === undefined) break
    const gain = state.criterion - next.criterion
    state = next
    if (gain < 1e-5) break
  }
  return state
}

function scored(
  problem: MixedProblem,
  state: RemlState,
  { held, total }: { readonly held: number; readonly total: number },
): RemlState | undefined {
  const { variances, score, information, residual } = state
  const size = variances.length
  const places = variances.flatMap((value, k) =>
    k !== held && (k === residual || value > 0 || score[k] > 0) ? [k] : [],
  )
  if (places.length === 0) return undefined
  const part = Float64Array.from(places.flatMap((k) => places.map((l) => information[k * size + l])))
  const inverse = invertSymmetric(part, places.length)
  if (inverse === undefined) return undefined
  const step = new Float64Array(size)
  for (const [a, k] of places.entries()) {
    for (const [b, l] of places.entries()) step[k] += inverse.inverse[a * places.length + b] * score[l]
  }
  for (let share = 1; share > 1e-4; share /= 2) {
    // Far from the optimum a step of scoring may leap; no part more than tenfolds at once or leaves the size of the data.
    const tried = variances.map((variance, k) => {
      if (k === held) return variance
      const most = Math.min(10 * variance + total, 1e3 * total)
      return Math.min(most, Math.max(k === residual ? 1e-5 * total : 0, variance + share * step[k]))
    })
    const next = remlState(problem, tried)
    if (next.criterion < state.criterion) return next
  }
  return undefined
}
