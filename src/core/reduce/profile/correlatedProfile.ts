import { correlatedFit, correlationLikelihood } from '../estimate/correlatedFit.ts'
import { laggedProducts } from '../estimate/laggedProducts.ts'
import { type NoiseCorrelation, noiseCorrelation } from '../estimate/noiseCorrelation.ts'
import { type HeldFit, SeparableProfile } from './separableProfile.ts'

/** A model that is linear but for the parameters of `places`, on equally spaced rows whose noise remembers. */
export interface CorrelatedModel {
  readonly response: Float64Array
  /** Columns with the non-linear parameters held at a place. */
  readonly columns: (at: readonly number[]) => readonly Float64Array[]
  /** Places to try first; one empty place for a model that is linear altogether. */
  readonly places: readonly (readonly number[])[]
  /** Finer places around the best one, the reach of which shrinks with `zoom`; none where nothing is to be refined. */
  readonly finer?: (best: readonly number[], zoom: number) => readonly (readonly number[])[]
}

/** Such a model fitted. */
export interface CorrelatedProfile {
  readonly profile: SeparableProfile
  readonly noise: NoiseCorrelation
  /** Standard deviation of one row's noise. */
  readonly deviation: number
  /** Of the variance of a slow combination: knows that the correlation itself is uncertain. */
  readonly effectiveFreedom: number
  readonly parameters: number
  /** −2 ln of the largest likelihood, up to a constant that all models of one response share. */
  readonly deviance: number
  /** Columns that belong to the best place. */
  readonly columns: readonly Float64Array[]
}

/** Rounds in which place and correlation settle. */
const rounds = 2

/** Each zoom looks so much closer than the one before, until so many places are accepted. */
const zooms = { factor: 0.25, most: 6, enough: 24 } as const

/**
 * Generalised least squares with first-order autoregressive noise at every place, with the one correlation that the best
 * place shows (restricted likelihood). Undefined where there are too few rows or the columns cannot be told apart.
 */
export function correlatedProfile(model: CorrelatedModel): CorrelatedProfile | undefined {
  const rows = model.response.length
  const width = (model.columns(model.places[0] ?? []).length ?? 0) + (model.places[0]?.length ?? 0)
  if (rows < width + 3) return undefined
  const fitAt = (at: readonly number[], correlation: number): HeldFit | undefined => {
    const fit = correlatedFit(laggedProducts([...model.columns(at), model.response]), correlation)
    if (fit === undefined || !(fit.variance >= 0)) return undefined
    const { coefficients, covariance, variance, degreesOfFreedom } = fit
    return { at, squares: variance * degreesOfFreedom, coefficients, gram: covariance.map((c) => c / variance) }
  }
  let noise: NoiseCorrelation = { correlation: 0, variance: 1 }
  let fits: HeldFit[] = []
  for (let round = 0; round <= rounds; round++) {
    fits = model.places.flatMap((at) => fitAt(at, noise.correlation) ?? [])
    if (fits.length === 0) return undefined
    for (let zoom = 0; zoom < (round === rounds ? zooms.most : 2) && model.finer !== undefined; zoom++) {
      if (zoom > 0 && closeTo(fits, rows) >= zooms.enough) break
      const { at: best } = leastOf(fits)
      fits.push(...model.finer(best, zooms.factor ** zoom).flatMap((at) => fitAt(at, noise.correlation) ?? []))
    }
    if (round === rounds) break
    const products = laggedProducts([...model.columns(leastOf(fits).at), model.response])
    noise = noiseCorrelation([correlationLikelihood(products)]).steps[0]
  }
  return finished(model, fits, noise)
}

function finished(model: CorrelatedModel, fits: readonly HeldFit[], noise: NoiseCorrelation): CorrelatedProfile {
  const rows = model.response.length
  const best = leastOf(fits)
  const parameters = best.coefficients.length + best.at.length
  const freedom = rows - parameters
  // ln of the variance of a mean is uncertain by the variance of the innovations and by that of ρ (delta method).
  const effectiveFreedom = 2 / (2 / freedom + 4 * (1 + noise.correlation) ** 2 * noise.variance)
  const profile = new SeparableProfile(fits, freedom, Math.max(1, Math.min(freedom, effectiveFreedom)))
  const columns = model.columns(best.at)
  return {
    profile,
    noise,
    deviation: Math.sqrt(profile.variance / (1 - noise.correlation ** 2)),
    effectiveFreedom,
    parameters,
    deviance: leastDeviance(columns, model.response),
    columns,
  }
}

/** How many places lie within about two standard deviations of the best one. */
function closeTo(fits: readonly HeldFit[], rows: number): number {
  const most = leastOf(fits).squares * (1 + 4 / rows)
  return fits.filter(({ squares }) => squares <= most).length
}

const leastOf = (fits: readonly HeldFit[]): HeldFit =>
  fits.reduce((best, fit) => (fit.squares < best.squares ? fit : best))

/** Correlations tried for the plain likelihood, by which models with different columns are compared. */
const tried = Array.from({ length: 60 }, (_, i) => Math.tanh(-0.8 + i * 0.07))

function leastDeviance(columns: readonly Float64Array[], response: Float64Array): number {
  const products = laggedProducts([...columns, response])
  const rows = response.length
  let least = Number.POSITIVE_INFINITY
  for (const correlation of tried) {
    const fit = correlatedFit(products, correlation)
    if (fit === undefined) continue
    const squares = fit.variance * fit.degreesOfFreedom
    const deviance = rows * Math.log(Math.max(squares, Number.MIN_VALUE) / rows) - Math.log(1 - correlation ** 2)
    least = Math.min(least, deviance)
  }
  return least
}
