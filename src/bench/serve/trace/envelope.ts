/** Rows of a block of the finest level; each coarser level takes as many blocks together. */
const factor = 16

interface Level {
  readonly min: Float64Array
  readonly max: Float64Array
}

/** A column with what makes the smallest and largest value of any stretch of it quick, however long the stretch is. */
export interface Envelope {
  readonly values: Float64Array
  /** Finest first. */
  readonly levels: readonly Level[]
}

/** Makes the levels over a column; NaN stands for nothing there. Made on `room`, so that another thread may read it. */
export function envelopeOf(values: Float64Array, room: (length: number) => Float64Array): Envelope {
  const levels: Level[] = []
  const span = new Span()
  let below: Level = { min: values, max: values }
  while (below.min.length > factor) {
    const blocks = Math.ceil(below.min.length / factor)
    const level = { min: room(blocks), max: room(blocks) }
    for (let block = 0; block < blocks; block++) {
      span.clear()
      span.widen(below, block * factor, Math.min(below.min.length, (block + 1) * factor))
      level.min[block] = span.low
      level.max[block] = span.high
    }
    levels.push(level)
    below = level
  }
  return { values, levels }
}

/** Smallest and largest of what it has taken; NaN while it has seen no number. */
export class Span {
  low = Number.NaN
  high = Number.NaN

  clear(): void {
    this.low = Number.NaN
    this.high = Number.NaN
  }

  /** Takes rows `from` (inclusive) to `to` (exclusive). */
  take({ values, levels }: Envelope, from: number, to: number): void {
    let a = from
    let b = to
    let level: Level = { min: values, max: values }
    for (const coarser of levels) {
      // The ends that fill no block of the next level are looked at here, the rest there.
      const first = Math.ceil(a / factor)
      const last = Math.floor(b / factor)
      if (first >= last) break
      this.widen(level, a, first * factor)
      this.widen(level, last * factor, b)
      a = first
      b = last
      level = coarser
    }
    this.widen(level, a, b)
  }

  widen({ min, max }: Level, from: number, to: number): void {
    let { low, high } = this
    for (let i = from; i < to; i++) {
      // A NaN so far fails the comparison and is replaced.
      if (!(low <= min[i]) && !Number.isNaN(min[i])) low = min[i]
      if (!(high >= max[i]) && !Number.isNaN(max[i])) high = max[i]
    }
    this.low = low
    this.high = high
  }
}
