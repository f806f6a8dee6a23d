import { cellsOf, type TurnRows } from './turnMap.ts'

/** Turns by places, brought to one level. */
export interface LevelledTurns {
  /** As they were binned; a row of cells each, NaN where nothing fell in. */
  readonly raw: readonly Float64Array[]
  /** Less (or over) the running mean of a whole turn, and as if every sample lay in the middle of its place. */
  readonly levelled: readonly Float64Array[]
}

interface Grid {
  readonly columns: number
  /** As in `TurnMap`. */
  readonly turns: readonly number[]
  readonly levelling: 'shift' | 'scale'
}

const turn = 2 * Math.PI
/** Orders of the turn whose slope within a place is taken off. */
const orders = [1, 2, 3, 4] as const

/**
 * Two things feign a change at one place: what drifts while a turn goes on, and samples that lie early in a place at first and late in it
 * later, where the ripple of the turn is steep. The running mean over a turn takes off the first; the slope of the turn's own harmonics, times how
 * far the samples of a cell lie from its middle, the second.
 */
export function turnRowsLevelled(pieces: () => Iterable<TurnRows>, grid: Grid): LevelledTurns {
  const { columns, turns } = grid
  const rows = Math.max(0, turns.length - 1)
  const mean = cellsOf(pieces, grid).mean
  const offset = cellsOf(() => offsetsOf(pieces(), columns), grid).mean
  const whole = turns.length > 1 && turns[1] - turns[0] === 1 ? runningLevel(mean, columns) : rowLevel(mean, columns)
  const level = mean.map((value, k) => (grid.levelling === 'scale' ? value / whole[k] : value - whole[k]))
  const slope = slopesOf(level, columns)
  const levelled = level.map((value, k) => value - slope[k % columns] * offset[k])
  const split = (values: Float64Array): readonly Float64Array[] =>
    Array.from({ length: rows }, (_, row) => values.subarray(row * columns, (row + 1) * columns))
  return { raw: split(mean), levelled: split(levelled) }
}

/** Angle of each sample from the middle of its place. */
function* offsetsOf(pieces: Iterable<TurnRows>, columns: number): Iterable<TurnRows> {
  const place = turn / columns
  for (const { angle, value } of pieces) {
    const apart = angle.map((at, i) =>
      Number.isNaN(value[i]) ? Number.NaN : at - (Math.floor(at / place) + 0.5) * place,
    )
    yield { angle, value: apart }
  }
}

/** Mean over the turn around each cell; NaN within half a turn of either end. */
function runningLevel(cells: Float64Array, columns: number): Float64Array {
  const half = columns >> 1
  const level = new Float64Array(cells.length).fill(Number.NaN)
  let sum = 0
  let count = 0
  const add = (k: number, sign: 1 | -1): void => {
    if (Number.isNaN(cells[k])) return
    sum += sign * cells[k]
    count += sign
  }
  for (let k = 0; k < cells.length; k++) {
    add(k, 1)
    if (k - columns >= 0) add(k - columns, -1)
    // The window k − columns + 1 … k lies around k − half.
    if (k - columns + 1 >= 0 && count > 0.6 * columns) level[k - half] = sum / count
  }
  return level
}

function rowLevel(cells: Float64Array, columns: number): Float64Array {
  const level = new Float64Array(cells.length)
  for (let from = 0; from < cells.length; from += columns) {
    const known = cells.subarray(from, from + columns).filter((value) => !Number.isNaN(value))
    level.fill(known.length === 0 ? Number.NaN : known.reduce((a, b) => a + b, 0) / known.length, from, from + columns)
  }
  return level
}

/** Slope by the angle, in the middle of each place, of the first harmonics of the mean profile. */
function slopesOf(level: Float64Array, columns: number): Float64Array {
  const profile = Float64Array.from({ length: columns }, (_, c) => {
    let sum = 0
    let count = 0
    for (let k = c; k < level.length; k += columns) {
      if (Number.isNaN(level[k])) continue
      sum += level[k]
      count++
    }
    return count === 0 ? 0 : sum / count
  })
  const at = (c: number): number => ((c + 0.5) / columns) * turn
  const slopes = new Float64Array(columns)
  for (const order of orders.filter((one) => one < columns / 4)) {
    const cosine = profile.reduce((sum, value, c) => sum + value * Math.cos(order * at(c)), 0) * (2 / columns)
    const sine = profile.reduce((sum, value, c) => sum + value * Math.sin(order * at(c)), 0) * (2 / columns)
    for (let c = 0; c < columns; c++) {
      slopes[c] += order * (sine * Math.cos(order * at(c)) - cosine * Math.sin(order * at(c)))
    }
  }
  return slopes
}
