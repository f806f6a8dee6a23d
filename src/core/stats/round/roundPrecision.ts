import { mean, summary } from '../summary.ts'

/** Results of one laboratory on one material at one level, here at one speed. */
export type Cell = readonly number[]

/** Precision of a method from one round at one level. */
export interface RoundPrecision {
  readonly laboratories: number
  /** Mean over the laboratories, each weighing by its results. */
  readonly mean: number
  /** s_r, between results of one laboratory. */
  readonly repeatability: number
  /** s_L, between laboratories beyond that; 0 where the estimate of its square is negative. */
  readonly betweenLaboratories: number
  /** s_R. */
  readonly reproducibility: number
  /** 2.8 s_r and 2.8 s_R: two results of one laboratory, or of two, seldom differ by more. */
  readonly repeatabilityLimit: number
  readonly reproducibilityLimit: number
  /** Standard deviation of the laboratories' means. */
  readonly meansDeviation: number
  readonly repeatabilityFreedom: number
}

/**
 * Repeatability and reproducibility (ISO 5725-2:2019, 8.5; ASTM E691, which gives the same where every laboratory has as many
 * results): s_r² pooled over the cells, s_L² = (s_d² − s_r²)/n̄ from zero up, s_R² = s_r² + s_L². Two laboratories at least, and
 * one with two results.
 */
export function roundPrecision(cells: readonly Cell[]): RoundPrecision {
  const counts = cells.map((cell) => cell.length)
  const total = counts.reduce((a, b) => a + b, 0)
  const repeatabilityFreedom = total - cells.length
  if (!(cells.length >= 2 && counts.every((count) => count >= 1) && repeatabilityFreedom >= 1)) {
    throw new RangeError(`a round needs two laboratories and one with two results, got sizes ${counts}`)
  }
  const means = cells.map((cell) => mean(cell))
  const pooled =
    cells.reduce((sum, cell, i) => sum + cell.reduce((s, value) => s + (value - means[i]) ** 2, 0), 0) /
    repeatabilityFreedom
  const grand = means[0] + means.reduce((sum, value, i) => sum + counts[i] * (value - means[0]), 0) / total
  const between = means.reduce((sum, value, i) => sum + counts[i] * (value - grand) ** 2, 0) / (cells.length - 1)
  const usual = (total - counts.reduce((sum, count) => sum + count * count, 0) / total) / (cells.length - 1)
  const betweenVariance = Math.max(0, (between - pooled) / usual)
  const repeatability = Math.sqrt(pooled)
  const reproducibility = Math.sqrt(pooled + betweenVariance)
  return {
    laboratories: cells.length,
    mean: grand,
    repeatability,
    betweenLaboratories: Math.sqrt(betweenVariance),
    reproducibility,
    repeatabilityLimit: limitFactor * repeatability,
    reproducibilityLimit: limitFactor * reproducibility,
    meansDeviation: summary(means).standardDeviation,
    repeatabilityFreedom,
  }
}

/** 1.96·√2 rounded as both standards round it. */
const limitFactor = 2.8
