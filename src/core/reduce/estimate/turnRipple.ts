/** One harmonic of one step: amplitude parts with their variances. */
export interface StepHarmonic {
  readonly cosine: number
  readonly sine: number
  readonly cosineVariance: number
  readonly sineVariance: number
}

/** What steps say together of one harmonic. */
export interface PooledHarmonic {
  readonly cosine: number
  readonly sine: number
  /** Variance of the pooled mean, of either part. */
  readonly variance: number
  /** Variance between steps, of either part (DerSimonian & Laird 1986). */
  readonly between: number
  readonly steps: number
  /** Σ amplitude²/variance: about χ² with two degrees of freedom a step where there is no ripple. */
  readonly signal: number
}

/** Weighted mean over steps with the scatter between them. Undefined for no steps. */
export function poolHarmonics(steps: readonly StepHarmonic[]): PooledHarmonic | undefined {
  if (steps.length === 0) return undefined
  const parts = steps.map((step) => ({
    cosine: step.cosine,
    sine: step.sine,
    variance: Math.max(step.cosineVariance, step.sineVariance, 1e-300),
  }))
  const weigh = (between: number) => {
    const weights = parts.map((part) => 1 / (part.variance + between))
    const total = weights.reduce((a, b) => a + b, 0)
    const mean = (pick: (part: (typeof parts)[number]) => number) =>
      parts.reduce((sum, part, i) => sum + weights[i] * pick(part), 0) / total
    return { weights, total, cosine: mean((part) => part.cosine), sine: mean((part) => part.sine) }
  }
  const fixed = weigh(0)
  const scatter = parts.reduce(
    (sum, part, i) => sum + fixed.weights[i] * ((part.cosine - fixed.cosine) ** 2 + (part.sine - fixed.sine) ** 2),
    0,
  )
  const squares = fixed.weights.reduce((sum, weight) => sum + weight * weight, 0)
  const free = fixed.total - squares / fixed.total
  const between = free > 0 ? Math.max(0, (scatter / 2 - (parts.length - 1)) / free) : 0
  const pooled = weigh(between)
  return {
    cosine: pooled.cosine,
    sine: pooled.sine,
    variance: 1 / pooled.total,
    between,
    steps: parts.length,
    signal: parts.reduce((sum, part) => sum + (part.cosine ** 2 + part.sine ** 2) / part.variance, 0),
  }
}
