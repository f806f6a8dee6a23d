import { mean, summary } from '../stats/index.ts'
import { cochran, cochranCritical, curveScatter, levene, mandelKCritical } from '../stats/judging/index.ts'
import type { ScatterCheck } from '../terms/index.ts'

/** Curves of each sample in the scale of the comparison. */
export interface SampleCurvesNamed {
  readonly name: string
  readonly curves: readonly Float64Array[]
}

/**
 * Whether the samples scatter alike: Cochran's test and Levene's on the levels of the curves, Mandel's k at each speed. Cochran and k
 * are for equal numbers of replicates; where they differ the mean number stands for all (ISO 5725-2). null for one sample or
 * where a sample has a single replicate.
 */
export function scatterCheck(samples: readonly SampleCurvesNamed[]): ScatterCheck | null {
  if (samples.length < 2 || samples.some(({ curves }) => curves.length < 2)) return null
  const cells = samples.length
  const replicates = samples.reduce((sum, { curves }) => sum + curves.length, 0) / cells
  const levels = samples.map(({ curves }) => curves.map((curve) => mean(curve)))
  const { statistic: seen, cell } = cochran(levels.map((values) => summary(values).standardDeviation ** 2))
  const limit = cochranCritical({ cells, replicates }, 0.05)
  const outlier = seen > cochranCritical({ cells, replicates }, 0.01)
  const pooled = curveScatter(samples.map(({ curves }) => curves)).deviation
  const k = samples.map(({ curves }) =>
    Array.from(curveScatter([curves]).deviation, (own, i) => (pooled[i] > 0 ? own / pooled[i] : 1)),
  )
  const sample = samples[cell].name
  return {
    cochran: { seen, limit, outlier, sample },
    k,
    kLimit: mandelKCritical({ cells, replicates }, 0.005),
    p: levels.every((values) => values.length >= 3) && seen > 0 ? levene(levels).p : null,
    sentence:
      seen > limit
        ? `${sample} scatters more than the others (Cochran ${seen.toFixed(2)}, limit ${limit.toFixed(2)} at 5 %): find out why, or let each sample have its own scatter.`
        : null,
  }
}
