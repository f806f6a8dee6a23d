import { findRoot } from '../numeric/index.ts'
import { chiSquaredQuantile } from './chiSquared.ts'

/** One life: how long it was, and whether it ended (`failed`) or was only watched so far (right-censored). */
export interface Life {
  readonly at: number
  readonly failed: boolean
}

/** A value with its 95 % profile-likelihood interval; an end is null where the data do not bound it. */
export interface ProfileInterval {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
}

/** Weibull law of lives, S(t) = exp(−(t/scale)^shape), by maximum likelihood. */
export interface WeibullFit {
  readonly shape: ProfileInterval
  readonly scale: ProfileInterval
  readonly logLikelihood: number
  readonly failures: number
  readonly censored: number
  /** The life by which a share of the pieces has failed. */
  readonly quantile: (share: number) => ProfileInterval
}

/** Fewest failures that fix two parameters. */
const fewestFailures = 2

/** Shapes beyond these are not believed to be a life. */
const shapes = { least: 1e-3, most: 1e4 } as const

/** Half the 95 % quantile of χ² with one degree of freedom: how far a profile may fall (Wilks 1938). */
const fall = chiSquaredQuantile(0.95, 1) / 2

/**
 * Weibull law with right-censored lives: maximum likelihood, intervals from profile likelihoods (Meeker & Escobar 1998,
 * ch. 8). Undefined where fewer than two different lives failed, since the likelihood then has no top.
 */
export function weibullFit(lives: readonly Life[]): WeibullFit | undefined {
  for (const { at } of lives)
    if (!(at > 0 && at < Infinity)) throw new RangeError(`a life must be above zero, got ${at}`)
  const failures = lives.filter(({ failed }) => failed)
  if (new Set(failures.map(({ at }) => at)).size < fewestFailures) return undefined
  const unit = Math.max(...lives.map(({ at }) => at))
  const sample = sampleOf(lives, unit)
  const shape = Math.exp(
    findRoot((ln) => shapeScore(sample, Math.exp(ln)), [Math.log(shapes.least), Math.log(shapes.most)]).at,
  )
  const top = logLikelihood(sample, shape, bestScale(sample, shape))
  const drop = (ln: number): number => top - fall - logLikelihood(sample, Math.exp(ln), bestScale(sample, Math.exp(ln)))
  const quantileAt = (shapeAt: number, share: number): number =>
    bestScale(sample, shapeAt) * (-Math.log1p(-share)) ** (1 / shapeAt)
  const quantile = (share: number): ProfileInterval => {
    if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`)
    const value = quantileAt(shape, share)
    const ends = endsAround(Math.log(value), (ln) => top - fall - quantileProfile(sample, share, Math.exp(ln)))
    return scaled({ value, ...ends }, unit)
  }
  return {
    shape: { value: shape, ...endsAround(Math.log(shape), drop) },
    scale: quantile(1 - Math.exp(-1)),
    logLikelihood: top - failures.length * Math.log(unit),
    failures: failures.length,
    censored: lives.length - failures.length,
    quantile,
  }
}

/** Lives in units of the longest, so that powers stay in range; logarithms once. */
interface Sample {
  readonly ln: Float64Array
  readonly failures: number
  readonly sumLnFailed: number
}

function sampleOf(lives: readonly Life[], unit: number): Sample {
  const ln = Float64Array.from(lives, ({ at }) => Math.log(at / unit))
  let sumLnFailed = 0
  for (const [i, { failed }] of lives.entries()) if (failed) sumLnFailed += ln[i]
  return { ln, failures: lives.filter(({ failed }) => failed).length, sumLnFailed }
}

/** Σ t^k over all lives and Σ t^k ln t. */
function powers({ ln }: Sample, shape: number): readonly [number, number] {
  let sum = 0
  let weighted = 0
  for (const value of ln) {
    const power = Math.exp(shape * value)
    sum += power
    weighted += power * value
  }
  return [sum, weighted]
}

/** Falls through zero at the most likely shape. */
function shapeScore(sample: Sample, shape: number): number {
  const [sum, weighted] = powers(sample, shape)
  return sample.failures / shape + sample.sumLnFailed - (sample.failures * weighted) / sum
}

const bestScale = (sample: Sample, shape: number): number => (powers(sample, shape)[0] / sample.failures) ** (1 / shape)

function logLikelihood(sample: Sample, shape: number, scale: number): number {
  const { failures, sumLnFailed } = sample
  const lnScale = Math.log(scale)
  const [sum] = powers(sample, shape)
  return failures * (Math.log(shape) - shape * lnScale) + (shape - 1) * sumLnFailed - sum * Math.exp(-shape * lnScale)
}

/** Largest likelihood with the life of a share held: one-dimensional in the shape, and single-topped. */
function quantileProfile(sample: Sample, share: number, life: number): number {
  const exposure = -Math.log1p(-share)
  const at = (lnShape: number): number => {
    const shape = Math.exp(lnShape)
    return logLikelihood(sample, shape, life * exposure ** (-1 / shape))
  }
  return largest(at, [Math.log(shapes.least), Math.log(shapes.most)])
}

/** A look at 120 places, then golden sections around the best. */
function largest(f: (x: number) => number, [low, high]: readonly [number, number]): number {
  const looks = 120
  let best = 0
  for (let i = 1; i <= looks; i++) {
    const place = (k: number): number => low + ((high - low) * k) / looks
    if (f(place(i)) > f(place(best)) || Number.isNaN(f(place(best)))) best = i
  }
  let a = low + ((high - low) * Math.max(0, best - 1)) / looks
  let b = low + ((high - low) * Math.min(looks, best + 1)) / looks
  const golden = (Math.sqrt(5) - 1) / 2
  for (let i = 0; i < 60; i++) {
    const [left, right] = [b - golden * (b - a), a + golden * (b - a)]
    if (f(left) > f(right)) b = right
    else a = left
  }
  return f((a + b) / 2)
}

/** Where a function of the logarithm, below zero at the estimate, crosses zero on either side. */
function endsAround(at: number, f: (ln: number) => number): { low: number | null; high: number | null } {
  const end = (way: 1 | -1): number | null => {
    let inside = at
    for (let step = 0.05; step < 40; step *= 1.6) {
      const outside = at + way * step
      const value = f(outside)
      if (Number.isNaN(value)) return null
      if (value > 0)
        return Math.exp(findRoot(f, way < 0 ? [outside, inside] : [inside, outside], { tolerance: 1e-10 }).at)
      inside = outside
    }
    return null
  }
  return { low: end(-1), high: end(1) }
}

const scaled = ({ value, low, high }: ProfileInterval, by: number): ProfileInterval => ({
  value: value * by,
  low: low === null ? null : low * by,
  high: high === null ? null : high * by,
})
