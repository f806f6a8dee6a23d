/** Σ sign(xⱼ − xᵢ) sign(yⱼ − yᵢ) over all pairs: concordant less discordant (Kendall 1938). */
export function kendallScore(x: ArrayLike<number>, y: ArrayLike<number>): number {
  let score = 0
  for (let j = 1; j < x.length; j++) {
    for (let i = 0; i < j; i++) score += Math.sign(x[j] - x[i]) * Math.sign(y[j] - y[i])
  }
  return score
}

/**
 * Variance of the score when nothing is related: (n(n−1)(2n+5) − Σt(t−1)(2t+5))/18 with ties in one variable alone, and
 * two further terms with ties in both (Kendall 1970, Rank Correlation Methods, eq. 4.4).
 */
export function kendallVariance(count: number, ties: readonly number[], otherTies: readonly number[] = []): number {
  const n = count
  const third = (sizes: readonly number[]): number => sizes.reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0)
  const second = (sizes: readonly number[]): number => sizes.reduce((sum, t) => sum + t * (t - 1) * (t - 2), 0)
  const first = (sizes: readonly number[]): number => sizes.reduce((sum, t) => sum + t * (t - 1), 0)
  const plain = (n * (n - 1) * (2 * n + 5) - third(ties) - third(otherTies)) / 18
  const triples = n > 2 ? (second(ties) * second(otherTies)) / (9 * n * (n - 1) * (n - 2)) : 0
  const pairs = n > 1 ? (first(ties) * first(otherTies)) / (2 * n * (n - 1)) : 0
  return plain + triples + pairs
}

/** Score as a standard normal, drawn in by one for continuity: (S − sign S)/√variance; 0 where nothing varies. */
export const kendallZ = (score: number, variance: number): number =>
  score === 0 || !(variance > 0) ? 0 : (score - Math.sign(score)) / Math.sqrt(variance)

/**
 * Probability of each number of discordant pairs, 0 to n(n−1)/2, among n values in random order without ties, by the
 * recurrence over n (Kendall 1938).
 */
export function discordantProbabilities(count: number): Float64Array {
  let now = Float64Array.of(1)
  for (let n = 2; n <= count; n++) {
    const next = new Float64Array((n * (n - 1)) / 2 + 1)
    for (let k = 0; k < next.length; k++) {
      let sum = 0
      for (let j = Math.max(0, k - now.length + 1); j <= Math.min(k, n - 1); j++) sum += now[k - j]
      next[k] = sum / n
    }
    now = next
  }
  return now
}
