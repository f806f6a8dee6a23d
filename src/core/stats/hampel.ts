import { percentileOfSorted } from '../numeric/index.ts'

/** Factor that makes the median absolute deviation of normal values their standard deviation: 1/Φ⁻¹(¾). */
const normalScale = 1.4826

/** Readings that stand out from their neighbours. */
export interface HampelFlags {
  readonly flagged: readonly number[]
  /** Median of the window about each reading. */
  readonly medians: Float64Array
  /** 1.4826 times the median absolute deviation in the same window. */
  readonly scaledMads: Float64Array
}

/**
 * Flags readings further than `threshold` scaled median absolute deviations from the median of the `halfWindow` readings
 * on either side, the window cut short at the ends (Hampel 1974; Davies & Gather 1993). Where over half of a window is equal its
 * deviation is zero and every other reading is flagged.
 */
export function hampel(
  values: ArrayLike<number>,
  { halfWindow, threshold }: { readonly halfWindow: number; readonly threshold: number },
): HampelFlags {
  if (!(Number.isInteger(halfWindow) && halfWindow >= 1)) {
    throw new RangeError(`half window must be a whole number from 1, got ${halfWindow}`)
  }
  if (!(threshold >= 0)) throw new RangeError(`threshold must be zero or more, got ${threshold}`)
  const all = Float64Array.from(values)
  const medians = new Float64Array(all.length)
  const scaledMads = new Float64Array(all.length)
  const flagged: number[] = []
  for (let i = 0; i < all.length; i++) {
    const window = all.slice(Math.max(0, i - halfWindow), i + halfWindow + 1).sort()
    medians[i] = percentileOfSorted(window, 0.5, 7)
    for (let j = 0; j < window.length; j++) window[j] = Math.abs(window[j] - medians[i])
    scaledMads[i] = normalScale * percentileOfSorted(window.sort(), 0.5, 7)
    if (Math.abs(all[i] - medians[i]) > threshold * scaledMads[i]) flagged.push(i)
  }
  return { flagged, medians, scaledMads }
}
