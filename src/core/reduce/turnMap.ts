import { percentile } from '../numeric/index.ts'

/** How finely a turn map is binned. */
export interface TurnMapOptions {
  /** Cells around one turn, 1 to 1440. */
  readonly columns: number
  /** Most rows of cells, 1 to 1000; each takes as many whole turns as are needed. */
  readonly rows: number
}

/** See `TurnMapOptions`: a cell per degree, and no more rows than a picture can show. */
export const turnMapDefaults: TurnMapOptions = { columns: 360, rows: 200 }

/** A value against angle (columns, from 0 to a full turn) and turn number (rows), the mean of each cell. */
export interface TurnMap {
  readonly columns: number
  readonly rows: number
  /**
   * Whole turns on the angle's own scale: row r holds turn `turns[r]` up to but without `turns[r + 1]`. One entry more
   * than there are rows, rising.
   */
  readonly turns: readonly number[]
  /** Row after row; NaN for an empty cell. */
  readonly mean: Float64Array
  /** Cells that no value fell into. */
  readonly empty: number
  /** What lies between holds 99 % of the cells; null where all are empty. */
  readonly range: readonly [number, number] | null
}

const turn = 2 * Math.PI

/**
 * Bins a value by the shaft's place in its turn and by turn number: what repeats every turn (tilt, run-out, a scratch)
 * stands as an upright stripe, what changes with time as a change from top to bottom. All rows hold equally many turns.
 *
 * @param angle running angle of the shaft, not folded into one turn
 * @param value one for each angle; rows in which either is NaN are left out
 */
export function turnMap(angle: Float64Array, value: Float64Array, options: Partial<TurnMapOptions> = {}): TurnMap {
  const { columns, rows } = turnMapOptions({ ...turnMapDefaults, ...options })
  const pieces = () => [{ angle, value }]
  const span = turnSpan(pieces())
  return cellsOf(pieces, { columns, turns: span === undefined ? [] : evenTurns(span, rows) })
}

/** One stretch of rows: an angle and a value each. */
export interface TurnRows {
  readonly angle: Float64Array
  readonly value: Float64Array
}

/** From a whole turn up to but without another. */
export interface TurnSpan {
  readonly from: number
  readonly to: number
}

/** The whole turns that hold a value; undefined where none does. */
export function turnSpan(pieces: Iterable<TurnRows>): TurnSpan | undefined {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const { angle, value } of pieces) {
    if (angle.length !== value.length) {
      throw new RangeError(`angle has ${angle.length} rows, value has ${value.length}`)
    }
    for (let i = 0; i < angle.length; i++) {
      if (!Number.isFinite(value[i]) || !Number.isFinite(angle[i])) continue
      if (angle[i] < low) low = angle[i]
      if (angle[i] > high) high = angle[i]
    }
  }
  return low <= high ? { from: Math.floor(low / turn), to: Math.floor(high / turn) + 1 } : undefined
}

/** The span in at most `rows` rows of equally many turns; the last row may reach beyond it. */
export function evenTurns({ from, to }: TurnSpan, rows: number): readonly number[] {
  const perRow = Math.ceil((to - from) / rows)
  return Array.from({ length: Math.ceil((to - from) / perRow) + 1 }, (_, row) => from + row * perRow)
}

/** The cells of a record that comes in pieces; `turns` are the rows as in `TurnMap`. */
export function cellsOf(
  pieces: () => Iterable<TurnRows>,
  { columns, turns }: { readonly columns: number; readonly turns: readonly number[] },
): TurnMap {
  const rows = Math.max(0, turns.length - 1)
  const sum = new Float64Array(columns * rows)
  const count = new Uint32Array(columns * rows)
  for (const { angle, value } of pieces()) {
    let row = 0
    for (let i = 0; i < angle.length; i++) {
      if (!Number.isFinite(value[i]) || !Number.isFinite(angle[i])) continue
      const place = angle[i] / turn
      const whole = Math.floor(place)
      // The shaft moves on: the row is the one before or close by.
      while (row > 0 && whole < turns[row]) row--
      while (row < rows - 1 && whole >= turns[row + 1]) row++
      // The product may round up to a whole turn.
      const cell = row * columns + Math.min(columns - 1, Math.floor((place - whole) * columns))
      sum[cell] += value[i]
      count[cell]++
    }
  }
  const mean = sum.map((total, cell) => (count[cell] === 0 ? Number.NaN : total / count[cell]))
  const filled = mean.filter((cell) => !Number.isNaN(cell))
  return { columns, rows, turns, mean, empty: mean.length - filled.length, range: middleRange(filled) }
}

/** The outermost half per cent on either side would take the colours from the rest. */
const middleRange = (filled: Float64Array): TurnMap['range'] =>
  filled.length === 0 ? null : [percentile(filled, 0.005), percentile(filled, 0.995)]

/** The options, looked at. Throws RangeError for bins that no picture can show. */
export function turnMapOptions(options: TurnMapOptions): TurnMapOptions {
  const limits = { columns: 1440, rows: 1000 } as const
  for (const name of ['columns', 'rows'] as const) {
    const given = options[name]
    if (!(Number.isInteger(given) && given >= 1 && given <= limits[name])) {
      throw new RangeError(`${name} must be a whole number from 1 to ${limits[name]}, got ${given}`)
    }
  }
  return options
}
