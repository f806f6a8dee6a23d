/** A written limit: null where a side is open. At least one side is closed, and `lower` lies below `upper`. */
export interface Tolerance {
  readonly lower: number | null
  readonly upper: number | null
}

/** Throws RangeError for limits that cannot be. */
export function checkedTolerance({ lower, upper }: Tolerance): Tolerance {
  const some = lower !== null || upper !== null
  const ends = (lower === null || Number.isFinite(lower)) && (upper === null || Number.isFinite(upper))
  if (!(some && ends && (lower ?? Number.NEGATIVE_INFINITY) < (upper ?? Number.POSITIVE_INFINITY))) {
    throw new RangeError(`a limit needs a lower end, an upper end or both in their order, got ${lower} and ${upper}`)
  }
  return { lower, upper }
}

/** True for a value that keeps to the limit. */
export const conforms = (value: number, { lower, upper }: Tolerance): boolean =>
  (lower === null || value >= lower) && (upper === null || value <= upper)
