/** Where a series turns: a peak or a trough, by its row. */
export interface TurningPoint {
  readonly kind: 'peak' | 'trough'
  readonly row: number
}

/**
 * Peaks and troughs in turn, each so far from the last that the series has moved by `reach` between them; smaller wiggles are passed
 * over. The first and the last stretch, whose ends lie outside the series, give none.
 */
export function turningPoints(series: Float64Array, reach: number): readonly TurningPoint[] {
  if (!(reach > 0)) throw new RangeError(`reach must be more than zero, got ${reach}`)
  const found: TurningPoint[] = []
  let high = 0
  let low = 0
  let heading: 'up' | 'down' | undefined
  for (let row = 1; row < series.length; row++) {
    if (series[row] > series[high]) high = row
    if (series[row] < series[low]) low = row
    if (heading !== 'down' && series[high] - series[row] > reach) {
      if (heading === 'up') found.push({ kind: 'peak', row: high })
      heading = 'down'
      low = row
      high = row
    } else if (heading !== 'up' && series[row] - series[low] > reach) {
      if (heading === 'down') found.push({ kind: 'trough', row: low })
      heading = 'up'
      low = row
      high = row
    }
  }
  return found
}
