/** Where a warm-up ends. */
export interface WarmUp {
  /** Samples to leave out at the head. */
  readonly cut: number
  /** The statistic for each number of batches left out, from none to half of all. */
  readonly statistic: Float64Array
  /** The minimum lies at the last place tried: the stretch is too short to show where its warm-up ends (White 1997). */
  readonly atLimit: boolean
}

const batch = 5

/**
 * MSER-5: leave out the batches d that minimise Σ(y − ȳ)²/(m − d)² over the m − d means of 5 samples that are left, with d at
 * most m/2 (White 1997, Simulation 69:323; White, Cobb & Spratt 2000). Ties go to the smallest d. Samples after the last
 * whole batch take no part. Fewer than two batches give no cut.
 */
export function mser5(values: ArrayLike<number>): WarmUp {
  const batches = Math.floor(values.length / batch)
  if (batches < 2) return { cut: 0, statistic: new Float64Array(0), atLimit: false }
  const most = Math.floor(batches / 2)
  const statistic = new Float64Array(most + 1)
  let mean = 0
  let squares = 0
  // From the end, so that each d adds one batch mean to those behind it (Welford 1962).
  for (let d = batches - 1; d >= 0; d--) {
    const left = batches - d
    const step = batchMean(values, d) - mean
    mean += step / left
    squares += (step * step * (left - 1)) / left
    if (d <= most) statistic[d] = squares / (left * left)
  }
  let best = 0
  for (let d = 1; d <= most; d++) if (statistic[d] < statistic[best]) best = d
  return { cut: best * batch, statistic, atLimit: best === most }
}

function batchMean(values: ArrayLike<number>, index: number): number {
  let sum = 0
  for (let i = index * batch; i < (index + 1) * batch; i++) sum += values[i]
  return sum / batch
}
