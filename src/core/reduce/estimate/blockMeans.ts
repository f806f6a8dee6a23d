/**
 * Means of several columns over blocks of so many rows, while the rows come one after the other. Rows that fill no block
 * at the end are left out.
 */
export class BlockMeans {
  /** One sum a column over the block that is open: add the values of a row here, then call `next`. */
  readonly sums: Float64Array
  readonly #block: number
  readonly #columns: readonly Float64Array[]
  readonly #begins: Uint32Array
  /** Whole blocks, and rows in the open one. */
  #blocks = 0
  #filled = 0

  /** @param rows most rows that will come */
  constructor({ columns, rows, block }: { columns: number; rows: number; block: number }) {
    this.sums = new Float64Array(columns)
    this.#block = block
    this.#columns = Array.from({ length: columns }, () => new Float64Array(Math.floor(rows / block)))
    this.#begins = new Uint32Array(Math.floor(rows / block) + 1)
  }

  /** Ends a row; `row` is its number. */
  next(row: number): void {
    if (this.#filled === 0) this.#begins[this.#blocks] = row
    if (++this.#filled < this.#block) return
    for (let column = 0; column < this.sums.length; column++) {
      this.#columns[column][this.#blocks] = this.sums[column] / this.#block
      this.sums[column] = 0
    }
    this.#blocks++
    this.#filled = 0
  }

  /** Means of one column. */
  means(column: number): Float64Array {
    return this.#columns[column].subarray(0, this.#blocks)
  }

  /** Number of the row with which each block begins, the open one included. */
  begins(): Uint32Array {
    return this.#begins.subarray(0, this.#blocks + (this.#filled > 0 ? 1 : 0))
  }
}
