/** A mean of results of unlike uncertainty. */
export interface WeightedMean {
  readonly mean: number
  readonly standardUncertainty: number
  /** Σ((xᵢ − mean)/uᵢ)². */
  readonly chiSquared: number
  readonly degreesOfFreedom: number
  /** √(χ²/ν): over one where the results differ by more than they say (Birge 1932). */
  readonly birgeRatio: number
}

/** A mean that allows for scatter between the results beyond their own uncertainties. */
export interface HeterogeneousMean {
  /** Standard deviation of that scatter; 0 where χ² does not exceed its degrees of freedom. */
  readonly tau: number
  readonly mean: number
  readonly standardUncertainty: number
}

/** Mean with weights 1/u². */
export function weightedMean(values: ArrayLike<number>, uncertainties: ArrayLike<number>): WeightedMean {
  checkPairs(values, uncertainties)
  const { mean, weight, chiSquared } = weighted(values, uncertainties, 0)
  const degreesOfFreedom = values.length - 1
  const birgeRatio = Math.sqrt(chiSquared / degreesOfFreedom)
  return { mean, standardUncertainty: 1 / Math.sqrt(weight), chiSquared, degreesOfFreedom, birgeRatio }
}

/** Scatter between results by moments: τ² = (χ² − ν)/(Σw − Σw²/Σw), from zero up (DerSimonian & Laird 1986). */
export function derSimonianLaird(values: ArrayLike<number>, uncertainties: ArrayLike<number>): HeterogeneousMean {
  checkPairs(values, uncertainties)
  const { chiSquared, weight, weightSquares } = weighted(values, uncertainties, 0)
  const variance = Math.max(0, (chiSquared - (values.length - 1)) / (weight - weightSquares / weight))
  return withScatter(values, uncertainties, variance)
}

/** Scatter between results that makes χ² equal its degrees of freedom, from zero up (Mandel & Paule 1970). */
export function mandelPaule(values: ArrayLike<number>, uncertainties: ArrayLike<number>): HeterogeneousMean {
  checkPairs(values, uncertainties)
  const free = values.length - 1
  // χ² falls with the variance and is convex: Newton steps from zero rise to the root and never pass it.
  let variance = 0
  for (let i = 0; i < 200; i++) {
    const { chiSquared, slope } = weighted(values, uncertainties, variance)
    const step = (chiSquared - free) / slope
    if (!(step > variance * 1e-15)) break
    variance += step
  }
  return withScatter(values, uncertainties, variance)
}

function withScatter(values: ArrayLike<number>, uncertainties: ArrayLike<number>, variance: number): HeterogeneousMean {
  const { mean, weight } = weighted(values, uncertainties, variance)
  return { tau: Math.sqrt(variance), mean, standardUncertainty: 1 / Math.sqrt(weight) }
}

interface Weighted {
  readonly mean: number
  readonly weight: number
  readonly weightSquares: number
  readonly chiSquared: number
  /** −dχ²/d(variance). */
  readonly slope: number
}

function weighted(values: ArrayLike<number>, uncertainties: ArrayLike<number>, variance: number): Weighted {
  let weight = 0
  let weightSquares = 0
  let shift = 0
  for (let i = 0; i < values.length; i++) {
    const w = 1 / (uncertainties[i] ** 2 + variance)
    weight += w
    weightSquares += w * w
    shift += w * (values[i] - values[0])
  }
  const mean = values[0] + shift / weight
  let chiSquared = 0
  let slope = 0
  for (let i = 0; i < values.length; i++) {
    const w = 1 / (uncertainties[i] ** 2 + variance)
    const part = w * (values[i] - mean) ** 2
    chiSquared += part
    slope += w * part
  }
  return { mean, weight, weightSquares, chiSquared, slope }
}

function checkPairs(values: ArrayLike<number>, uncertainties: ArrayLike<number>): void {
  if (!(values.length >= 2 && uncertainties.length === values.length)) {
    throw new RangeError(
      `needs two or more values with as many uncertainties, got ${values.length} and ${uncertainties.length}`,
    )
  }
  for (let i = 0; i < uncertainties.length; i++) {
    if (!(uncertainties[i] > 0)) throw new RangeError(`uncertainty ${i} must be above zero, got ${uncertainties[i]}`)
  }
}
