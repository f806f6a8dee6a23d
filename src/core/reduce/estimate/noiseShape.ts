/**
 * Noise of which a share A has memory: autocorrelation Aλᵏ at lag k ≥ 1 (white noise beside an AR(1), an ARMA(1, 1)).
 * An AR(1) alone would miss the slow part of it.
 */
interface Shape {
  readonly share: number
  readonly memory: number
  readonly weight: number
}

/** Lags that the shape is learned from. */
const lags = 20

/** Fewest rows in the record before a shape is looked for. */
const fewestRows = 100

const rounds = 6

/** What the shape of the noise says of means over many rows. */
export interface NoiseShape {
  /** Autocorrelation at lag one. */
  readonly lagOne: number
  /** n·var(mean)/σ² of n rows, and the variance of its logarithm over the shapes that the data allow. */
  readonly inflation: (rows: number) => { readonly mean: number; readonly logVariance: number }
}

/**
 * Shape of the noise of one channel from its residuals in all steps: every shape on a grid is weighed by how well its one-step
 * predictor does on the pooled autocorrelations (a likelihood of prediction errors, flat before the data), and what is
 * asked is averaged over them. Undefined where the record is too short to tell.
 */
export function noiseShape(residuals: readonly Float64Array[]): NoiseShape | undefined {
  const rows = residuals.reduce((sum, residual) => sum + residual.length, 0)
  if (rows < fewestRows) return undefined
  const seen = pooledCorrelations(residuals)
  // The fitted level took the variance of the mean from every covariance; how much that was depends on the shape itself.
  let shapes = weighed(seen, rows)
  for (let round = 0; round < rounds; round++) {
    const taken = Math.min(0.9, (inflationOf(shapes, rows / residuals.length).mean * residuals.length) / rows)
    shapes = weighed(
      seen.map((r) => r * (1 - taken) + taken),
      rows,
    )
  }
  const lagOne = shapes.reduce((sum, { share, memory, weight }) => sum + weight * share * memory, 0)
  return { lagOne, inflation: (count) => inflationOf(shapes, count) }
}

function pooledCorrelations(residuals: readonly Float64Array[]): number[] {
  const products = new Array<number>(lags + 1).fill(0)
  const pairs = new Array<number>(lags + 1).fill(0)
  for (const residual of residuals) {
    const variance = laggedSum(residual, 0) / residual.length
    if (!(variance > 0)) continue
    for (let lag = 0; lag <= Math.min(lags, residual.length - 1); lag++) {
      products[lag] += laggedSum(residual, lag) / variance
      pairs[lag] += residual.length - lag
    }
  }
  return products.map((product, lag) => (lag === 0 ? 1 : product / Math.max(pairs[lag], 1)))
}

function laggedSum(values: Float64Array, lag: number): number {
  let sum = 0
  for (let i = lag; i < values.length; i++) sum += values[i] * values[i - lag]
  return sum
}

interface Candidate {
  readonly share: number
  readonly memory: number
  /** Mean square of e[t] − Σ aᵢ e[t−i] for the candidate's own predictor: Σ costs[k]·r[k] on the autocorrelations r. */
  readonly costs: Float64Array
}

const candidates: readonly Candidate[] = Array.from({ length: 21 }, (_, i) => Math.tanh(0.13 * i)).flatMap((memory) =>
  Array.from({ length: 10 }, (_, j) => (j + 1) / 10).map((share) => ({
    share,
    memory,
    costs: predictionCosts(Float64Array.from({ length: lags + 1 }, (_, k) => (k === 0 ? 1 : share * memory ** k))),
  })),
)

function weighed(correlations: readonly number[], rows: number): Shape[] {
  const scores = candidates.map(({ costs }) => {
    let error = 0
    for (let k = 0; k < costs.length; k++) error += costs[k] * correlations[k]
    return -0.5 * rows * Math.log(Math.max(error, 1e-12))
  })
  const top = Math.max(...scores)
  const weights = scores.map((score) => Math.exp(score - top))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  return candidates.flatMap(({ share, memory }, i) => {
    const weight = weights[i] / total
    return weight > 1e-6 ? [{ share, memory, weight }] : []
  })
}

/** Autocorrelation of the filter 1, −a₁, −a₂ …, whose aᵢ predict noise of these correlations best (Levinson & Durbin). */
function predictionCosts(correlations: Float64Array): Float64Array {
  const filter = new Float64Array(correlations.length)
  filter[0] = 1
  let variance = 1
  for (let order = 1; order < filter.length; order++) {
    let left = 0
    for (let i = 0; i < order; i++) left += filter[i] * correlations[order - i]
    const reflection = left / variance
    for (let i = 0, j = order; i <= j; i++, j--) {
      const [first, last] = [filter[i], filter[j]]
      filter[i] = first - reflection * last
      filter[j] = last - reflection * first
    }
    variance *= 1 - reflection * reflection
  }
  const costs = new Float64Array(filter.length)
  for (let lag = 0; lag < costs.length; lag++) {
    for (let i = lag; i < filter.length; i++) costs[lag] += (lag === 0 ? 1 : 2) * filter[i] * filter[i - lag]
  }
  return costs
}

function inflationOf(shapes: readonly Shape[], rows: number): { mean: number; logVariance: number } {
  let mean = 0
  let first = 0
  let second = 0
  for (const { share, memory, weight } of shapes) {
    const tail = (2 * memory * (1 - memory ** rows)) / (rows * (1 - memory) ** 2)
    const inflation = 1 - share + share * ((1 + memory) / (1 - memory) - tail)
    mean += weight * inflation
    first += weight * Math.log(inflation)
    second += weight * Math.log(inflation) ** 2
  }
  return { mean, logVariance: Math.max(0, second - first * first) }
}
