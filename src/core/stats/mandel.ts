import { fisherFQuantile } from './fisherF.ts'
import { studentTQuantile } from './studentT.ts'

/**
 * Value that Mandel's h, the deviation of one of `cells` means from their mean over their standard deviation, exceeds with
 * probability `significance` (two-sided): (p − 1)t/√(p(t² + p − 2)) with t at p − 2 degrees of freedom (ASTM E691; ISO 5725-2:2019).
 */
export function mandelHCritical(cells: number, significance: number): number {
  if (!(Number.isInteger(cells) && cells >= 3))
    throw new RangeError(`cells must be a whole number from 3, got ${cells}`)
  const t = studentTQuantile(1 - significance / 2, cells - 2)
  return (cells - 1) / Math.sqrt(cells * (1 + (cells - 2) / (t * t)))
}

/**
 * Value that Mandel's k, the standard deviation of one cell over the pooled one, exceeds with probability `significance`:
 * √(p/(1 + (p − 1)/F)) with F at n − 1 and (p − 1)(n − 1) degrees of freedom.
 */
export function mandelKCritical(
  { cells, replicates }: { readonly cells: number; readonly replicates: number },
  significance: number,
): number {
  if (!(Number.isInteger(cells) && cells >= 2))
    throw new RangeError(`cells must be a whole number from 2, got ${cells}`)
  if (!(replicates > 1 && replicates < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`replicates must be more than 1, got ${replicates}`)
  }
  const f = fisherFQuantile(1 - significance, [replicates - 1, (cells - 1) * (replicates - 1)])
  return Math.sqrt(cells / (1 + (cells - 1) / f))
}
