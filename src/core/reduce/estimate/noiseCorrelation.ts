/**
 * Lag-one correlation of the noise, learned from all steps of a record together.
 *
 * One short step says little about its own correlation, and a wrong one makes its uncertainty wrong by far more than
 * the noise itself. Noise comes from the rig and is much alike in all steps, so each step's restricted likelihood
 * (Harville 1974; free of the bias that fitted regressors bring) is combined with a normal law of Fisher's
 * z = atanh ρ over the steps, whose mean and spread are found by the largest marginal likelihood (empirical Bayes).
 * Where the steps agree they share one correlation; where they differ each keeps its own.
 */

const lowest = -0.8
const highest = 3.2
const spacing = 0.02
const grid = Float64Array.from({ length: Math.round((highest - lowest) / spacing) + 1 }, (_, i) => lowest + i * spacing)
const coarseSpacing = 0.1
const coarse = Array.from({ length: Math.round((highest - lowest) / coarseSpacing) + 1 }, (_, i) =>
  Math.tanh(lowest + i * coarseSpacing),
)
const spreads = [0.02, 0.1, 0.2, 0.4, 0.8]
const kernels = spreads.map(normalKernel)
const cubics = Array.from(grid, (z) => cubicWeights((z - lowest) / coarseSpacing))

/** A spread between steps is believed when it makes the data more likely by this much (natural logarithm). */
const clearGain = 3

/** Lag-one correlation of one step's noise, and how well it is known. */
export interface NoiseCorrelation {
  /** ρ at the mean of z. */
  readonly correlation: number
  /** Variance of z = atanh ρ. */
  readonly variance: number
}

/** Correlations of all steps and the law that they follow. */
export interface SharedNoise {
  readonly steps: readonly NoiseCorrelation[]
  /** ρ at the centre of the law over the steps. */
  readonly centre: number
  /** Standard deviation of z between steps; the smallest tried value stands for none. */
  readonly spread: number
}

/** @param logLikelihoods of ρ, one function for each step, up to a constant */
export function noiseCorrelation(logLikelihoods: readonly ((correlation: number) => number)[]): SharedNoise {
  const likelihoods = logLikelihoods.map(relativeLikelihood)
  let best: Law = { score: Number.NEGATIVE_INFINITY, mean: 0, spread: spreads[0], evidence: new Float64Array(0) }
  for (const [k, spread] of spreads.entries()) {
    const needed = () => best.score + (spread > spreads[0] && best.spread === spreads[0] ? clearGain : 0)
    if (!(highestEvidence(likelihoods, kernels[k]) > needed())) continue
    const evidence = logEvidence(likelihoods, kernels[k])
    for (let i = 0; i < grid.length; i++) {
      const score = evidence[i] - (grid[i] - 1) ** 2 / 18
      if (score > needed()) best = { score, mean: grid[i], spread, evidence }
    }
  }
  const centreVariance = varianceOfCentre(best)
  return {
    centre: Math.tanh(best.mean),
    spread: best.spread,
    steps: likelihoods.map((likelihood) => posterior(likelihood, { ...best, centreVariance })),
  }
}

/** Normal law of z over the steps. */
interface Law {
  readonly score: number
  readonly mean: number
  readonly spread: number
  /** Logarithm of the marginal likelihood of every mean on the grid, under this spread. */
  readonly evidence: Float64Array
}

/** exp(L − max L) on the grid, from a coarser one: L is smooth, only its height grows with the rows. */
function relativeLikelihood(logLikelihood: (correlation: number) => number): Float64Array {
  const seen = coarse.map(logLikelihood)
  const values = new Float64Array(grid.length)
  let top = Number.NEGATIVE_INFINITY
  for (let i = 0; i < values.length; i++) {
    const { first, weights } = cubics[i]
    for (let k = 0; k < weights.length; k++) values[i] += weights[k] * seen[first + k]
    top = Math.max(top, values[i])
  }
  return values.map((value) => (Number.isFinite(value) ? Math.exp(value - top) : 0))
}

/** Lagrange interpolation at a place between coarse values, through the four nearest. */
function cubicWeights(at: number): { first: number; weights: number[] } {
  const first = Math.min(Math.max(Math.floor(at) - 1, 0), coarse.length - 4)
  const near = [first, first + 1, first + 2, first + 3]
  const weights = near.map((i) => near.reduce((weight, j) => (j === i ? weight : (weight * (at - j)) / (i - j)), 1))
  return { first, weights }
}

function normalKernel(spread: number): Float64Array {
  const half = Math.ceil((4 * spread) / spacing)
  const weights = Float64Array.from({ length: 2 * half + 1 }, (_, i) =>
    Math.exp(-0.5 * (((i - half) * spacing) / spread) ** 2),
  )
  const total = sum(weights)
  return weights.map((weight) => weight / total)
}

/** Nothing that `logEvidence` gives lies above this; most spreads need no closer look. */
function highestEvidence(likelihoods: readonly Float64Array[], kernel: Float64Array): number {
  const most = kernel[kernel.length >> 1]
  const rounding = 1e-6
  return likelihoods.reduce((total, one) => total + Math.log(Math.min(1, Math.max(sum(one) * most, floor))), rounding)
}

/** A floor keeps the logarithm finite. */
const floor = 1e-300

/** Σ over the steps of ln ∫ likelihood(z) N(z; mean, spread) dz for every mean on the grid. */
function logEvidence(likelihoods: readonly Float64Array[], kernel: Float64Array): Float64Array {
  const half = kernel.length >> 1
  const total = new Float64Array(grid.length)
  for (const likelihood of likelihoods) {
    for (let at = 0; at < total.length; at++) {
      let smoothed = 0
      const to = Math.min(grid.length - 1, at + half)
      for (let i = Math.max(0, at - half); i <= to; i++) smoothed += kernel[i - at + half] * likelihood[i]
      total[at] += Math.log(Math.max(smoothed, floor))
    }
  }
  return total
}

/** Curvature of the marginal likelihood at its top. */
function varianceOfCentre({ evidence }: Law): number {
  const top = evidence.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  return moments(evidence.map((value) => Math.exp(value - top))).variance
}

function posterior(
  likelihood: Float64Array,
  law: { mean: number; spread: number; centreVariance: number },
): NoiseCorrelation {
  const variance = law.spread ** 2 + law.centreVariance
  const weights = likelihood.map((value, i) =>
    value === 0 ? 0 : value * Math.exp(-((grid[i] - law.mean) ** 2) / (2 * variance)),
  )
  const { mean, variance: spread } = moments(weights)
  return { correlation: Math.tanh(mean), variance: spread }
}

/** Mean and variance of z under weights on the grid. */
function moments(weights: Float64Array): { mean: number; variance: number } {
  let total = 0
  let first = 0
  let second = 0
  for (let i = 0; i < grid.length; i++) {
    const w = weights[i]
    total += w
    first += w * grid[i]
    second += w * grid[i] * grid[i]
  }
  const mean = total > 0 ? first / total : 0
  // Half a spacing is the finest that the grid can tell.
  return { mean, variance: Math.max(total > 0 ? second / total - mean * mean : 1, (spacing * spacing) / 12) }
}

function sum(values: Float64Array): number {
  let total = 0
  for (const value of values) total += value
  return total
}
