import { median } from '../numeric/index.ts'
import type { Radian, Ratio } from '../terms/index.ts'
import { batchesOf, columnMeans, turnBand } from './turnBand.ts'
import type { TurnRows, TurnSpan } from './turnMap.ts'
import { turnRowsLevelled } from './turnRowsLevelled.ts'
import { type TurnSpot, turnSpot } from './turnSpot.ts'

/** What changed from early to late turns, place by place around the turn. */
export interface TurnDifference {
  /** Middle of each place. */
  readonly angles: readonly Radian[]
  /** Means over the early and the late turns. */
  readonly early: Float64Array
  readonly late: Float64Array
  /** Change that all places share: the median of late less early. */
  readonly level: number
  /** Late less early less `level`, with a band that holds all places together in 95 % of the cases. */
  readonly local: Float64Array
  readonly low: Float64Array
  readonly high: Float64Array
  /** Turns from and up to but without, on the scale of the angle. */
  readonly earlyTurns: TurnSpan
  readonly lateTurns: TurnSpan
  /** Place where the value changed by more than the band allows; null where there is none. */
  readonly spot: TurnSpot | null
}

/** How early and late turns are compared. */
export interface TurnDifferenceOptions {
  /** Places around the turn, 8 to 360. */
  readonly columns: number
  /** Share of all turns that counts as early, and as late. */
  readonly share: Ratio
  /** What changes everywhere shifts a row or scales it. Friction scales, and a ripple with it. */
  readonly levelling: 'shift' | 'scale'
}

/** See `TurnDifferenceOptions`. */
export const turnDifferenceDefaults: TurnDifferenceOptions = {
  columns: 36,
  share: 1 / 3,
  levelling: 'shift',
}

const turn = 2 * Math.PI
/** Turns are averaged into no more than so many rows. */
const mostRows = 2000
const fewestRows = 3
/** Share of the places that must have been met on both sides. */
const fewestPlaces = 0.6

/**
 * Late turns less early ones, place by place. Turns are first brought to one level (see `turnRowsLevelled`), so that what changes everywhere
 * (running-in, heating) stays apart from what changes at one place. Rows are averaged into up to ten batches a side; the band
 * is Welch's, at Šidák's level for all places together. Undefined with fewer than three rows on a
 * side, or where too few places were met.
 */
export function turnDifference(
  pieces: () => Iterable<TurnRows>,
  span: TurnSpan,
  options: Partial<TurnDifferenceOptions> = {},
): TurnDifference | undefined {
  const { columns, share, levelling } = { ...turnDifferenceDefaults, ...options }
  if (!(Number.isInteger(columns) && columns >= 8 && columns <= 360)) {
    throw new RangeError(`columns must be a whole number from 8 to 360, got ${columns}`)
  }
  if (!(share > 0 && share <= 0.5)) throw new RangeError(`share must be more than 0 and at most 0.5, got ${share}`)
  const perRow = Math.max(1, Math.ceil((span.to - span.from) / mostRows))
  const turns = Array.from({ length: Math.floor((span.to - span.from) / perRow) + 1 }, (_, i) => span.from + i * perRow)
  const { raw, levelled: even } = turnRowsLevelled(pieces, { columns, turns, levelling })
  const rows = raw.length
  const take = Math.floor(rows * share)
  if (take < fewestRows) return undefined
  const profile = columnMeans(raw.slice(0, take), columns)
  const usual = columnMeans(even.slice(0, take), columns)
  const scale = levelling === 'scale' ? mean(profile) : 1
  const levelled = even.map((row) => row.map((value) => scale * value))
  const sides = [levelled.slice(0, take), levelled.slice(rows - take)].map((side) => batchesOf(side, columns))
  const band = turnBand(sides, columns)
  const seen = band.high.filter((value) => !Number.isNaN(value)).length
  if (seen < fewestPlaces * columns) return undefined
  const late = columnMeans(raw.slice(rows - take), columns)
  const change = late.map((value, column) => value - profile[column])
  const level = median(change.filter((value) => !Number.isNaN(value)))
  const found = {
    angles: Array.from({ length: columns }, (_, column) => ((column + 0.5) / columns) * turn),
    early: profile,
    late,
    level,
    ...band,
    earlyTurns: { from: turns[0], to: turns[take] },
    lateTurns: { from: turns[rows - take], to: turns[rows] },
  }
  const base = usual.map((value) => scale * value)
  return { ...found, spot: turnSpot(found, { levelled, base, turns }) }
}

const mean = (values: Float64Array): number => {
  const known = values.filter((value) => !Number.isNaN(value))
  return known.reduce((a, b) => a + b, 0) / known.length
}
