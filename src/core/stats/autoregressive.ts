/** How a record was treated before its lag-one correlation was taken. */
export interface LagOneSetting {
  readonly count: number
  /** Level, trend and whatever else varies slowly over the record: 1 for the mean alone. */
  readonly slowRegressors?: number
  /** Angular frequencies of removed sines and cosines, a pair each, in rad per sample. */
  readonly harmonics?: readonly number[]
}

/**
 * Expected lag-one correlation Σe[t]e[t+1]/Σe² of the residuals of an AR(1) record with coefficient ρ, to order 1/n:
 * ρ − [3ρ + Σ(cos ω − ρ)S(ω)]/n with S(ω) = (1 − ρ²)/(1 − 2ρ cos ω + ρ²), summed over the removed regressors, each
 * of which takes the spectrum's part at its frequency with it. With the mean alone this is ρ − (1 + 4ρ)/n (Kendall 1954; Marriott
 * & Pope 1954, Biometrika 41:390), with k slow regressors ρ − (k + (k + 3)ρ)/n. Good while n(1 − ρ) is well above the number
 * of regressors; beyond that a restricted likelihood does better.
 */
export function expectedLagOne(rho: number, { count, slowRegressors = 1, harmonics = [] }: LagOneSetting): number {
  let bias = 3 * rho + slowRegressors * (1 + rho)
  for (const omega of harmonics) {
    const cosine = Math.cos(omega)
    bias += (2 * (cosine - rho) * (1 - rho * rho)) / (1 - 2 * rho * cosine + rho * rho)
  }
  return rho - bias / count
}

/**
 * Lag-one correlation of the noise from that of the residuals: the ρ whose expected lag-one correlation is the one seen,
 * within ±(1 − 1/n).
 */
export function correctLagOne(seen: number, setting: LagOneSetting): number {
  const { count, slowRegressors = 1, harmonics = [] } = setting
  const removed = slowRegressors + 2 * harmonics.length
  if (!(seen >= -1 && seen <= 1)) throw new RangeError(`correlation must lie between −1 and 1, got ${seen}`)
  if (!(count > removed + 3)) {
    throw new RangeError(`lag-one correction needs over ${removed + 3} samples for ${removed} regressors, got ${count}`)
  }
  let low = -1 + 1 / count
  let high = 1 - 1 / count
  if (seen <= expectedLagOne(low, setting)) return low
  if (seen >= expectedLagOne(high, setting)) return high
  // Bisection: the expectation rises with ρ, and 40 halvings leave 1e-12.
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2
    if (expectedLagOne(middle, setting) < seen) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * n Var(mean)/σ² of n samples of an AR(1) record, exactly: (1 + φ)/(1 − φ) − 2φ(1 − φⁿ)/(n(1 − φ)²) (Priestley 1981, sec.
 * 5.3.2). It nears the autocorrelation time for long records and n for φ → 1.
 */
export function meanVarianceFactor(coefficient: number, count: number): number {
  if (!(coefficient > -1 && coefficient <= 1))
    throw new RangeError(`φ must lie above −1 and at most at 1, got ${coefficient}`)
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`count must be a whole number from 1, got ${count}`)
  const away = 1 - coefficient
  // Near φ = 1 the closed form is a small difference of large numbers.
  if (away * count > 0.5) {
    return (1 + coefficient) / away - (2 * coefficient * (1 - coefficient ** count)) / (count * away * away)
  }
  let sum = 0
  let power = 1
  for (let lag = 1; lag < count; lag++) {
    power *= coefficient
    sum += (1 - lag / count) * power
  }
  return 1 + 2 * sum
}
