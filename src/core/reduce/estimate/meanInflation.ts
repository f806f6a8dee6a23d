/** n·var(mean)/σ² of n rows with lag-one correlation ρ: (1+ρ)/(1−ρ) − 2ρ(1−ρⁿ)/(n(1−ρ)²), exact. */
export const meanInflation = (correlation: number, rows: number): number =>
  (1 + correlation) / (1 - correlation) -
  (2 * correlation * (1 - correlation ** rows)) / (rows * (1 - correlation) ** 2)
