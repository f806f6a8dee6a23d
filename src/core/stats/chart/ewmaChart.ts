/** Against what an exponentially weighted mean is held. */
export interface EwmaSetting {
  readonly centre: number
  readonly deviation: number
  /** Weight of the newest value, above 0 to 1; 0.2 where left out. */
  readonly weight?: number
  /** Half-width of the limits in standard deviations of the mean; 2.962 where left out, which with 0.2 alarms once in 500. */
  readonly width?: number
  /** `exact` limits widen from the first value on, `steady` ones are those of a long series. */
  readonly limits?: 'exact' | 'steady'
}

/** An exponentially weighted mean at one value with the limits there. */
export interface EwmaPoint {
  readonly mean: number
  readonly lower: number
  readonly upper: number
  readonly alarm: boolean
}

/**
 * Exponentially weighted moving average zᵢ = w·xᵢ + (1 − w)·zᵢ₋₁ from the centre on (Roberts 1959; NIST/SEMATECH e-Handbook
 * 6.3.2.4). It sees small lasting shifts that single values hide.
 */
export function ewmaChart(
  values: readonly number[],
  { centre, deviation, weight = 0.2, width = 2.962, limits = 'exact' }: EwmaSetting,
): readonly EwmaPoint[] {
  if (!(weight > 0 && weight <= 1)) throw new RangeError(`weight must be above 0 to 1, got ${weight}`)
  if (!(deviation >= 0 && width > 0)) {
    throw new RangeError(`deviation must be zero or more and width above it, got ${deviation} and ${width}`)
  }
  let mean = centre
  return values.map((value, i) => {
    mean = weight * value + (1 - weight) * mean
    const settled = limits === 'steady' ? 1 : 1 - (1 - weight) ** (2 * (i + 1))
    const half = width * deviation * Math.sqrt((weight / (2 - weight)) * settled)
    return { mean, lower: centre - half, upper: centre + half, alarm: Math.abs(mean - centre) > half }
  })
}
