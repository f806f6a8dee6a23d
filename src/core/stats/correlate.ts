import { deviationsOf } from './deviations.ts'

/** Pearson's correlation coefficient; that of the means of simultaneous readings too (JCGM 100:2008, 5.2.3). NaN where one does not vary. */
export function correlate(x: ArrayLike<number>, y: ArrayLike<number>): number {
  if (!(x.length >= 2 && x.length === y.length)) {
    throw new RangeError(`correlate needs two equally long lists of two or more, got ${x.length} and ${y.length}`)
  }
  const a = deviationsOf(x).deviations
  const b = deviationsOf(y).deviations
  let products = 0
  let first = 0
  let second = 0
  for (let i = 0; i < a.length; i++) {
    products += a[i] * b[i]
    first += a[i] * a[i]
    second += b[i] * b[i]
  }
  return products / (Math.sqrt(first) * Math.sqrt(second))
}
