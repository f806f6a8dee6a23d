import { cochran, cochranCritical } from '../cochran.ts'
import { grubbs, grubbsCritical } from '../grubbs.ts'
import { grubbsPair, grubbsPairCritical } from '../grubbsPair.ts'
import { mandelHCritical, mandelKCritical } from '../mandel.ts'
import { mean, summary } from '../summary.ts'
import type { Cell } from './roundPrecision.ts'

/** Mandel's statistics of one laboratory: how far its mean lies off, and how wide its results scatter. */
export interface LaboratoryConsistency {
  readonly mean: number
  readonly deviation: number
  readonly count: number
  /** null where all means are equal. */
  readonly h: number | null
  readonly hCritical: number | null
  /** null where it has one result. */
  readonly k: number | null
  readonly kCritical: number | null
}

/** An outlier test with what it is held against; `straggler` is beyond 5 %, `outlier` beyond 1 %. */
export interface OutlierTest {
  readonly test: 'cochran' | 'grubbsHigh' | 'grubbsLow' | 'grubbsPairHigh' | 'grubbsPairLow'
  readonly statistic: number
  readonly straggler: number
  readonly outlier: number
  readonly verdict: 'none' | 'straggler' | 'outlier'
  /** Places of the laboratories that it is about. */
  readonly laboratories: readonly number[]
}

/** Consistency of a round at one level. Everything is flagged, nothing is removed. */
export interface RoundConsistency {
  readonly laboratories: readonly LaboratoryConsistency[]
  readonly tests: readonly OutlierTest[]
}

/** Significance of h and k, as ASTM E691 has it. */
export const consistencySignificance = 0.005

/**
 * h and k of each laboratory (ASTM E691; ISO 5725-2:2019, 8.3.1), Cochran's test of the scatter and Grubbs' tests of the means (8.3.4
 * and 8.3.5). Cochran's test takes the cells of the most frequent size, and Grubbs' pair test is left out where a single
 * mean is an outlier already, as the standard has it.
 */
export function roundConsistency(cells: readonly Cell[]): RoundConsistency {
  const means = cells.map((cell) => mean(cell))
  const deviations = cells.map((cell) => (cell.length >= 2 ? summary(cell).standardDeviation : Number.NaN))
  const { mean: grand, standardDeviation: spread } = summary(means)
  const free = cells.reduce((sum, cell) => sum + cell.length - 1, 0)
  const pooled = Math.sqrt(
    cells.reduce((sum, cell, i) => sum + (cell.length >= 2 ? (cell.length - 1) * deviations[i] ** 2 : 0), 0) / free,
  )
  const enough = cells.length >= 3
  return {
    laboratories: cells.map((cell, i) => ({
      mean: means[i],
      deviation: deviations[i],
      count: cell.length,
      h: spread > 0 ? (means[i] - grand) / spread : null,
      hCritical: enough ? mandelHCritical(cells.length, consistencySignificance) : null,
      k: cell.length >= 2 && pooled > 0 ? deviations[i] / pooled : null,
      kCritical:
        cell.length >= 2
          ? mandelKCritical({ cells: cells.length, replicates: cell.length }, consistencySignificance)
          : null,
    })),
    tests: [...scatterTest(cells, deviations), ...meanTests(means)],
  }
}

function scatterTest(cells: readonly Cell[], deviations: readonly number[]): readonly OutlierTest[] {
  const sizes = cells.map((cell) => cell.length).filter((size) => size >= 2)
  const usual = mostFrequent(sizes)
  const places = cells.flatMap((cell, i) => (cell.length === usual ? [i] : []))
  if (usual === undefined || places.length < 2) return []
  const { statistic, cell } = cochran(places.map((i) => deviations[i] ** 2))
  const critical = (significance: number): number =>
    cochranCritical({ cells: places.length, replicates: usual }, significance)
  return [
    judged('cochran', statistic, { laboratories: [places[cell]], straggler: critical(0.05), outlier: critical(0.01) }),
  ]
}

function meanTests(means: readonly number[]): readonly OutlierTest[] {
  if (means.length < 3) return []
  const one = grubbs(means)
  const ends = { straggler: grubbsCritical(means.length, 0.05), outlier: grubbsCritical(means.length, 0.01) }
  const single = [
    judged('grubbsHigh', one.high, { laboratories: [one.highest], ...ends }),
    judged('grubbsLow', one.low, { laboratories: [one.lowest], ...ends }),
  ]
  const straggler = grubbsPairCritical(means.length, 0.05)
  const outlier = grubbsPairCritical(means.length, 0.01)
  if (means.length < 4 || straggler === undefined || outlier === undefined) return single
  if (single.some(({ verdict }) => verdict === 'outlier')) return single
  const two = grubbsPair(means)
  return [
    ...single,
    judgedBelow('grubbsPairHigh', two.high, { laboratories: two.highest, straggler, outlier }),
    judgedBelow('grubbsPairLow', two.low, { laboratories: two.lowest, straggler, outlier }),
  ]
}

type Held = Pick<OutlierTest, 'laboratories' | 'straggler' | 'outlier'>

const judged = (test: OutlierTest['test'], statistic: number, held: Held): OutlierTest => ({
  ...{ test, statistic, ...held },
  verdict: statistic > held.outlier ? 'outlier' : statistic > held.straggler ? 'straggler' : 'none',
})

/** The pair tests reject small values. */
const judgedBelow = (test: OutlierTest['test'], statistic: number, held: Held): OutlierTest => ({
  ...{ test, statistic, ...held },
  verdict: statistic < held.outlier ? 'outlier' : statistic < held.straggler ? 'straggler' : 'none',
})

function mostFrequent(sizes: readonly number[]): number | undefined {
  const counts = new Map<number, number>()
  for (const size of sizes) counts.set(size, (counts.get(size) ?? 0) + 1)
  return [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0]
}
