/** Time that goes back where nothing explains it. Row counts from 0, line from 1; times as they stand in the file. */
export interface TimeJump {
  readonly row: number
  readonly line: number
  readonly time: number
  readonly before: number
}

interface Shift {
  readonly row: number
  readonly by: number
}

/**
 * Watches that time never runs back. Where a step begins, the file's clock may begin again; the record's time then runs
 * on: the new step's first sample comes as long after the last one as its own clock says, or one sampling interval.
 */
export class Clock {
  /** All times that run back unexplained are counted, the first few kept. */
  readonly jumps: TimeJump[] = []
  jumpCount = 0
  readonly #shifts: Shift[] = []
  readonly #keep: number
  #latest = Number.NEGATIVE_INFINITY
  #before = Number.NaN

  constructor(keep: number) {
    this.#keep = keep
  }

  /** How often the clock began again. */
  get restarts(): number {
    return this.#shifts.length
  }

  /** Takes the time of the next row; false where it lies before the one of the row before, or is NaN. */
  runs(time: number): boolean {
    if (!(time >= this.#latest)) return false
    this.#before = this.#latest
    this.#latest = time
    return true
  }

  /** Takes a time that did not run on. `begins` says that a step begins with this row. */
  back(time: number, at: { readonly row: number; readonly line: number; readonly begins: boolean }): void {
    const { row, line, begins } = at
    if (begins) this.#shifts.push({ row, by: this.#shiftFor(time) })
    else {
      this.jumpCount++
      if (this.jumps.length < this.#keep) this.jumps.push({ row, line, time, before: this.#latest })
    }
    this.#before = Number.NaN
    this.#latest = time
  }

  #shiftFor(time: number): number {
    const end = this.#latest + (this.#shifts.at(-1)?.by ?? 0)
    const last = this.#latest - this.#before
    const interval = Number.isFinite(last) ? last : 0
    return time > 0 && time <= 2 * interval ? end : end + interval - time
  }

  /** Makes the times of one piece, whose first row is `firstRow`, run on. */
  runOn(times: Float64Array, firstRow: number, rows: number): void {
    if (this.#shifts.length === 0) return
    let next = this.#shifts.findLastIndex(({ row }) => row <= firstRow)
    for (let by = this.#shifts[next]?.by ?? 0, at = 0; at < rows; at++) {
      if (this.#shifts[next + 1]?.row === firstRow + at) by = this.#shifts[++next].by
      times[at] += by
    }
  }
}
