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
const coarseCount = Math.round((highest - lowest) / coarseSpacing) + 1
const spreads = [0.02, 0.1, 0.2, 0.4, 0.8]

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
  let best = { score: Number.NEGATIVE_INFINITY, mean: 0, spread: spreads[0] }
  for (const spread of spreads) {
    const kernel = normalKernel(spread)
    const evidence = likelihoods.map((likelihood) => smoothed(likelihood, kernel))
    for (let i = 0; i < grid.length; i++) {
      let score = -((grid[i] - 1) ** 2) / 18
      for (const step of evidence) score += Math.log(step[i])
      const needed = spread > spreads[0] && best.spread === spreads[0] ? clearGain : 0
      if (score > best.score + needed) best = { score, mean: grid[i], spread }
    }
  }
  const centreVariance = varianceOfCentre(likelihoods, best)
  return {
    centre: Math.tanh(best.mean),
    spread: best.spread,
    steps: likelihoods.map((likelihood) => posterior(likelihood, { ...best, centreVariance })),
  }
}

/** exp(L − max L) on the grid, from a coarser one: L is smooth, only its height grows with the rows. */
function relativeLikelihood(logLikelihood: (correlation: number) => number): Float64Array {
  const coarse = Float64Array.from({ length: coarseCount }, (_, i) =>
    logLikelihood(Math.tanh(lowest + i * coarseSpacing)),
  )
  const values = grid.map((z) => cubicAt(coarse, (z - lowest) / coarseSpacing))
  const top = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  return values.map((value) => (Number.isFinite(value) ? Math.exp(value - top) : 0))
}

/** Lagrange interpolation through the four nearest values. */
function cubicAt(values: Float64Array, at: number): number {
  const first = Math.min(Math.max(Math.floor(at) - 1, 0), values.length - 4)
  let sum = 0
  for (let i = first; i < first + 4; i++) {
    let weight = 1
    for (let j = first; j < first + 4; j++) if (j !== i) weight *= (at - j) / (i - j)
    sum += weight * values[i]
  }
  return sum
}

function normalKernel(spread: number): Float64Array {
  const half = Math.ceil((4 * spread) / spacing)
  const weights = Float64Array.from({ length: 2 * half + 1 }, (_, i) =>
    Math.exp(-0.5 * (((i - half) * spacing) / spread) ** 2),
  )
  const total = weights.reduce((a, b) => a + b, 0)
  return weights.map((weight) => weight / total)
}

/** ∫ likelihood(z) N(z; mean, spread) dz for every mean on the grid; a floor keeps the logarithm finite. */
function smoothed(likelihood: Float64Array, kernel: Float64Array): Float64Array {
  const half = (kernel.length - 1) / 2
  return likelihood.map((_, at) => {
    let sum = 0
    for (let k = -half; k <= half; k++) sum += kernel[k + half] * (likelihood[at + k] ?? 0)
    return Math.max(sum, 1e-300)
  })
}

/** Curvature of the marginal likelihood at its top. */
function varianceOfCentre(likelihoods: readonly Float64Array[], best: { mean: number; spread: number }): number {
  const kernel = normalKernel(best.spread)
  const total = new Float64Array(grid.length)
  for (const likelihood of likelihoods) {
    const evidence = smoothed(likelihood, kernel)
    for (let i = 0; i < total.length; i++) total[i] += Math.log(evidence[i])
  }
  const top = total.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
  return moments((i) => Math.exp(total[i] - top)).variance
}

function posterior(
  likelihood: Float64Array,
  law: { mean: number; spread: number; centreVariance: number },
): NoiseCorrelation {
  const variance = law.spread ** 2 + law.centreVariance
  const { mean, variance: spread } = moments(
    (i) => likelihood[i] * Math.exp(-((grid[i] - law.mean) ** 2) / (2 * variance)),
  )
  return { correlation: Math.tanh(mean), variance: spread }
}

function moments(weight: (index: number) => number): { mean: number; variance: number } {
  let sum = 0
  let first = 0
  let second = 0
  for (let i = 0; i < grid.length; i++) {
    const w = weight(i)
    sum += w
    first += w * grid[i]
    second += w * grid[i] * grid[i]
  }
  const mean = sum > 0 ? first / sum : 0
  // Half a spacing is the finest that the grid can tell.
  return { mean, variance: Math.max(sum > 0 ? second / sum - mean * mean : 1, (spacing * spacing) / 12) }
}
