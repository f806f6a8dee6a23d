/** Smallest and largest value of each column of a picture; NaN where a column holds no number. */
export interface MinMax {
  readonly min: Float64Array
  readonly max: Float64Array
}

/**
 * Two values a pixel: the smallest and largest of the rows that fall into each column, so that no peak is lost however
 * few columns there are. One pass. NaN stands for an empty cell and never wins; a column without rows or with
 * nothing but empty cells is NaN.
 *
 * @param values the rows, or the blocks of a min/max pyramid
 * @param columns how many of equal row count, or the row at which each begins with the end as the last entry (see `columnEdges`)
 */
export function minMaxColumns(values: Float64Array | MinMax, columns: number | Uint32Array): MinMax {
  const { min: lows, max: highs } = values instanceof Float64Array ? { min: values, max: values } : values
  if (lows.length !== highs.length) throw new RangeError(`min has ${lows.length} values, max has ${highs.length}`)
  const edges = typeof columns === 'number' ? evenEdges(lows.length, columns) : columns
  const count = edges.length - 1
  const min = new Float64Array(count)
  const max = new Float64Array(count)
  for (let column = 0; column < count; column++) {
    let low = Number.NaN
    let high = Number.NaN
    for (let row = edges[column]; row < edges[column + 1]; row++) {
      if (!(low <= lows[row]) && !Number.isNaN(lows[row])) low = lows[row]
      if (!(high >= highs[row]) && !Number.isNaN(highs[row])) high = highs[row]
    }
    min[column] = low
    max[column] = high
  }
  return { min, max }
}

/**
 * The rows at which `columns` columns of equal width begin on a scale along which `ascending` never falls, such as
 * time; one more entry holds the number of rows. A row on an edge belongs to the column on its right, the last row to the last column.
 */
export function columnEdges(ascending: Float64Array, columns: number): Uint32Array {
  const edges = new Uint32Array(checked(columns) + 1)
  const rows = ascending.length
  edges[columns] = rows
  const start = rows === 0 ? 0 : ascending[0]
  const width = rows === 0 ? 0 : (ascending[rows - 1] - start) / columns
  for (let column = 1; column < columns; column++) {
    edges[column] = firstFrom(ascending, start + column * width, edges[column - 1])
  }
  return edges
}

/** First row at or after `from` whose value reaches `limit`. */
function firstFrom(ascending: Float64Array, limit: number, from: number): number {
  let low = from
  let high = ascending.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (ascending[middle] >= limit) high = middle
    else low = middle + 1
  }
  return low
}

const evenEdges = (rows: number, columns: number): Uint32Array =>
  Uint32Array.from({ length: checked(columns) + 1 }, (_, column) => Math.floor((column * rows) / columns))

function checked(columns: number): number {
  if (!(Number.isInteger(columns) && columns >= 1)) {
    throw new RangeError(`columns must be a whole number of one or more, got ${columns}`)
  }
  return columns
}
