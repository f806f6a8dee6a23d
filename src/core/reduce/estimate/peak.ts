/** Largest value of a signal, either way, and the most rows in which it stood there without a break. */
export class Peak {
  size = 0
  run = 0
  /** Rows at the peak up to the row seen last. */
  #open = 0

  /** Takes the rows that follow. */
  watch(values: Float64Array): void {
    let { size, run } = this
    let open = this.#open
    for (let i = 0; i < values.length; i++) {
      const value = Math.abs(values[i])
      if (value > size) {
        size = value
        run = 0
        open = 0
      }
      open = value > 0 && value === size ? open + 1 : 0
      if (open > run) run = open
    }
    this.size = size
    this.run = run
    this.#open = open
  }
}
