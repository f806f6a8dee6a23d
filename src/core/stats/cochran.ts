import { fisherFQuantile } from './fisherF.ts'

/** Cells that were compared: how many, and the results in each. */
export interface CochranSetting {
  readonly cells: number
  readonly replicates: number
}

/** Cochran's statistic of a set of variances. */
export interface Cochran {
  /** Largest variance over the sum of all. */
  readonly statistic: number
  /** Which cell has it. */
  readonly cell: number
}

/**
 * Share that the largest of several variances, each of the same number of results, has of their sum (Cochran 1941; ISO
 * 5725-2:2019, 8.3.4). 0 where all variances are zero.
 */
export function cochran(variances: readonly number[]): Cochran {
  if (!(variances.length >= 2 && variances.every((variance) => variance >= 0))) {
    throw new RangeError(`Cochran's test needs two or more variances from zero up, got ${variances}`)
  }
  const cell = variances.indexOf(Math.max(...variances))
  const sum = variances.reduce((a, b) => a + b, 0)
  return { statistic: sum > 0 ? variances[cell] / sum : 0, cell }
}

/** Value that Cochran's statistic exceeds with probability `significance` at most, where all cells have one variance. */
export function cochranCritical({ cells, replicates }: CochranSetting, significance: number): number {
  if (!(Number.isInteger(cells) && cells >= 2))
    throw new RangeError(`cells must be a whole number from 2, got ${cells}`)
  if (!(replicates > 1 && replicates < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`replicates must be more than 1, got ${replicates}`)
  }
  const f = fisherFQuantile(1 - significance / cells, [replicates - 1, (cells - 1) * (replicates - 1)])
  return 1 / (1 + (cells - 1) / f)
}
