import { median } from '../numeric/index.ts'
import { studentTQuantile } from '../stats/index.ts'

/** Rows that count as one on either side: neighbours are alike, batches hardly are. */
const batches = 10

/** A difference place by place with a band that holds all places together. */
export interface TurnBand {
  readonly local: Float64Array
  readonly low: Float64Array
  readonly high: Float64Array
}

/** Mean of each place over rows, holes left out. */
export function columnMeans(rows: readonly Float64Array[], columns: number): Float64Array {
  return Float64Array.from({ length: columns }, (_, column) => {
    let sum = 0
    let count = 0
    for (const row of rows) {
      if (Number.isNaN(row[column])) continue
      sum += row[column]
      count++
    }
    return count === 0 ? Number.NaN : sum / count
  })
}

/** Rows averaged into up to ten batches. */
export const batchesOf = (rows: readonly Float64Array[], columns: number): readonly Float64Array[] => {
  const count = Math.min(batches, rows.length)
  return Array.from({ length: count }, (_, i) =>
    columnMeans(
      rows.slice(Math.floor((i * rows.length) / count), Math.floor(((i + 1) * rows.length) / count)),
      columns,
    ),
  )
}

interface Side {
  readonly mean: Float64Array
  readonly residuals: readonly Float64Array[]
  /** Of the mean. */
  readonly variance: Float64Array
}

function sideOf(batch: readonly Float64Array[], columns: number): Side {
  const mean = columnMeans(batch, columns)
  const residuals = batch.map((row) => row.map((value, column) => value - mean[column]))
  const variance = Float64Array.from(
    { length: columns },
    (_, c) => residuals.reduce((sum, row) => sum + (row[c] || 0) ** 2, 0) / (batch.length - 1) / batch.length,
  )
  return { mean, residuals, variance }
}

/** Welch's interval at each place, widened so that all hold together. */
export function turnBand(sides: readonly (readonly Float64Array[])[], columns: number): TurnBand {
  const [early, late] = sides.map((side) => sideOf(side, columns))
  const apart = late.mean.map((value, c) => value - early.mean[c])
  // What grows at one place lifts the mean of the turn a little; the median of the places hardly sees it.
  const known = apart.filter((value) => !Number.isNaN(value))
  const rest = known.length === 0 ? Number.NaN : median(known)
  const local = apart.map((value) => value - rest)
  const error = early.variance.map((value, c) => Math.sqrt(value + late.variance[c]))
  // Places hardly share their noise, so Šidák's level is nearly exact; what they do share makes it safer.
  const places = error.filter((one) => one > 0).length
  const together = 1 - 0.95 ** (1 / Math.max(1, places))
  const half = error.map((one, c) => {
    const [a, b] = [early.variance[c], late.variance[c]]
    const freedom = (a + b) ** 2 / (a ** 2 / (sides[0].length - 1) + b ** 2 / (sides[1].length - 1))
    return one > 0 ? one * studentTQuantile(1 - together / 2, Math.max(1, freedom)) : 0
  })
  return { local, low: local.map((value, c) => value - half[c]), high: local.map((value, c) => value + half[c]) }
}
