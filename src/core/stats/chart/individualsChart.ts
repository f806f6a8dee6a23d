/** A chart of single values with their moving ranges. */
export interface IndividualsChart {
  readonly centre: number
  /** Estimate of σ from the mean moving range, which a slow drift hardly widens. */
  readonly deviation: number
  readonly lower: number
  readonly upper: number
  /** Distance of each value from the one before, from the second value on. */
  readonly movingRanges: readonly number[]
  readonly meanRange: number
  readonly rangeUpper: number
  /** How many values, from the first on, the limits come from. */
  readonly baseline: number
}

/** Mean of the range of two normal values over σ, 2/√π, and the upper limit of such ranges over their mean. */
const rangeOfTwo = 2 / Math.sqrt(Math.PI)
const rangeLimit = 1 + 3 * Math.sqrt(Math.PI / 2 - 1)

/**
 * Individuals and moving ranges (ISO 7870-2:2013, 8; NIST/SEMATECH e-Handbook 6.3.2.2): centre ± 3·MR̄/d2, and MR̄·D4 for the
 * ranges. Limits come from the first `baseline` values, all where it is left out, and stay as they are for the later ones.
 */
export function individualsChart(values: readonly number[], baseline = values.length): IndividualsChart {
  if (!(Number.isInteger(baseline) && baseline >= 2 && baseline <= values.length)) {
    throw new RangeError(`limits need 2 to ${values.length} values, got ${baseline}`)
  }
  const centre = mean(values.slice(0, baseline))
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - values[i]))
  const meanRange = mean(movingRanges.slice(0, baseline - 1))
  const deviation = meanRange / rangeOfTwo
  return {
    centre,
    deviation,
    lower: centre - 3 * deviation,
    upper: centre + 3 * deviation,
    movingRanges,
    meanRange,
    rangeUpper: rangeLimit * meanRange,
    baseline,
  }
}

function mean(values: readonly number[]): number {
  return values[0] + values.reduce((sum, value) => sum + (value - values[0]), 0) / values.length
}
