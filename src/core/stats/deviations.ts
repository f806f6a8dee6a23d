import { compensatedSum } from '../numeric/index.ts'

/**
 * Values less their mean, and the mean. The first value is taken off first, so that digits common to all values cost
 * nothing, and what rounding leaves of the mean is taken off again (Chan, Golub & LeVeque 1983).
 */
export function deviationsOf(values: ArrayLike<number>): { readonly mean: number; readonly deviations: Float64Array } {
  const count = values.length
  if (!(count >= 1)) throw new RangeError('a mean needs at least one value, got none')
  const first = values[0]
  const deviations = new Float64Array(count)
  for (let i = 0; i < count; i++) deviations[i] = values[i] - first
  const shift = takeOffMean(deviations)
  return { mean: first + (shift + takeOffMean(deviations)), deviations }
}

function takeOffMean(values: Float64Array): number {
  const mean = compensatedSum(values) / values.length
  for (let i = 0; i < values.length; i++) values[i] -= mean
  return mean
}
