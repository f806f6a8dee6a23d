import { percentile } from '../numeric/index.ts'

/** How finely a turn map is binned. */
export interface TurnMapOptions {
  /** Cells around one turn, 1 to 360. */
  readonly columns: number
  /** Most rows of cells, 1 to 200; each takes as many whole turns as are needed. */
  readonly rows: number
}

/** See `TurnMapOptions`: a cell per degree, and no more rows than a picture can show. */
export const turnMapDefaults: TurnMapOptions = { columns: 360, rows: 200 }

/** A value against angle (columns, from 0 to a full turn) and turn number (rows), the mean of each cell. */
export interface TurnMap {
  readonly columns: number
  readonly rows: number
  /** Number of the first turn: the whole turns that lie before it on the angle's own scale. */
  readonly firstTurn: number
  /** Turns that share one row of cells. */
  readonly turnsPerRow: number
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
 * stands as an upright stripe, what changes with time as a change from top to bottom.
 *
 * @param angle running angle of the shaft, not folded into one turn
 * @param value one for each angle; rows in which either is NaN are left out
 */
export const turnMap = (angle: Float64Array, value: Float64Array, options: Partial<TurnMapOptions> = {}): TurnMap =>
  turnMapOfPieces(() => [{ angle, value }], options)

/** One stretch of rows: an angle and a value each. */
export interface TurnRows {
  readonly angle: Float64Array
  readonly value: Float64Array
}

/** The same for a record that comes in pieces, which is gone through twice: once for its turns, once for its cells. */
export function turnMapOfPieces(pieces: () => Iterable<TurnRows>, options: Partial<TurnMapOptions> = {}): TurnMap {
  const { columns, rows } = checked({ ...turnMapDefaults, ...options })
  const { first, last } = turnsOf(pieces())
  const turns = last - first + 1
  const turnsPerRow = Math.max(1, Math.ceil(turns / rows))
  const grid = { columns, rows: Math.ceil(turns / turnsPerRow), firstTurn: first, turnsPerRow }
  const mean = cellMeans(pieces(), grid)
  const filled = mean.filter((cell) => !Number.isNaN(cell))
  return { ...grid, mean, empty: mean.length - filled.length, range: middleRange(filled) }
}

/** First and last turn that hold a value; a last one before the first where none does. */
function turnsOf(pieces: Iterable<TurnRows>): { readonly first: number; readonly last: number } {
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
  return low <= high ? { first: Math.floor(low / turn), last: Math.floor(high / turn) } : { first: 0, last: -1 }
}

type Grid = Pick<TurnMap, 'columns' | 'rows' | 'firstTurn' | 'turnsPerRow'>

function cellMeans(pieces: Iterable<TurnRows>, grid: Grid): Float64Array {
  const { columns, rows, firstTurn, turnsPerRow } = grid
  const sum = new Float64Array(columns * rows)
  const count = new Uint32Array(columns * rows)
  for (const { angle, value } of pieces) {
    for (let i = 0; i < angle.length; i++) {
      if (!Number.isFinite(value[i]) || !Number.isFinite(angle[i])) continue
      const turns = angle[i] / turn
      const whole = Math.floor(turns)
      // The product may round up to a whole turn.
      const column = Math.min(columns - 1, Math.floor((turns - whole) * columns))
      const cell = Math.floor((whole - firstTurn) / turnsPerRow) * columns + column
      sum[cell] += value[i]
      count[cell]++
    }
  }
  return sum.map((total, cell) => (count[cell] === 0 ? Number.NaN : total / count[cell]))
}

/** The outermost half per cent on either side would take the colours from the rest. */
const middleRange = (filled: Float64Array): TurnMap['range'] =>
  filled.length === 0 ? null : [percentile(filled, 0.005), percentile(filled, 0.995)]

function checked(options: TurnMapOptions): TurnMapOptions {
  const limits = { columns: 360, rows: 200 } as const
  for (const name of ['columns', 'rows'] as const) {
    const given = options[name]
    if (!(Number.isInteger(given) && given >= 1 && given <= limits[name])) {
      throw new RangeError(`${name} must be a whole number from 1 to ${limits[name]}, got ${given}`)
    }
  }
  return options
}
