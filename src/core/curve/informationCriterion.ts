/** What the criterion needs; `parameters` counts a variance too where that is estimated from the residuals. */
export interface Judged {
  readonly minusTwoLnL: number
  readonly parameters: number
  readonly points: number
}

/**
 * Akaike's criterion corrected for few points (Hurvich & Tsai 1989, Biometrika 76:297): −2 ln L + 2k + 2k(k+1)/(n−k−1). With
 * a variance estimated from the residuals −2 ln L is n ln(rss/n), with known ones it is χ². Infinite where the points do not
 * suffice.
 */
export function aicc({ minusTwoLnL, parameters, points }: Judged): number {
  const left = points - parameters - 1
  if (!(left > 0)) return Number.POSITIVE_INFINITY
  return minusTwoLnL + 2 * parameters + (2 * parameters * (parameters + 1)) / left
}

/** Akaike weights: exp(−Δ/2) over their sum (Burnham & Anderson 2002, section 2.9). */
export const akaikeWeights = (criteria: readonly number[]): readonly number[] =>
  shares(criteria.map((value) => -value / 2))

/** Numbers in proportion to the exponentials of given logarithms, with sum 1; −Infinity gives 0. */
export function shares(logarithms: readonly number[]): readonly number[] {
  const most = Math.max(...logarithms)
  const parts = logarithms.map((value) => Math.exp(value - most))
  const sum = parts.reduce((total, part) => total + part, 0)
  return parts.map((part) => part / sum)
}
