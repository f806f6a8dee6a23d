import type { Piece } from './envelopes.ts'
import type { TileChannel } from './tile.ts'
import { span, type View } from './view.ts'

/** As much of a canvas as bars need. */
export interface BarPen {
  fillRect(x: number, y: number, width: number, height: number): void
}

/** Where a channel is painted: device pixels across, and heights of SI values in device pixels. */
export interface TracePlace {
  readonly view: View
  readonly left: number
  readonly right: number
  readonly y: (value: number) => number
  /** Device pixels that a line is thick. */
  readonly thick: number
}

/** Empty columns that a line runs across at the least, for slow channels beside quick ones; longer ones where entries lie far apart. */
const bridged = 6

/** Smallest and largest height of each device pixel across; room is kept from picture to picture. */
export class PixelColumns {
  top = new Float32Array(0)
  bottom = new Float32Array(0)

  /** All columns without a value. */
  clear(count: number): void {
    if (this.top.length < count) {
      this.top = new Float32Array(count)
      this.bottom = new Float32Array(count)
    }
    this.top.fill(Number.NaN, 0, count)
    this.bottom.fill(Number.NaN, 0, count)
  }
}

/**
 * One channel as upright bars of a pixel, each from smallest to largest and joined to the one before. Bars on whole pixels need no
 * smoothing, which makes them many times as quick as a path of as many corners.
 */
export function paintTrace(
  context: BarPen,
  { pieces, name }: { pieces: readonly Piece[]; name: Parameters<Piece['tile']['channels']['get']>[0] },
  { place, columns }: { place: TracePlace; columns: PixelColumns },
): void {
  const count = Math.max(0, Math.floor(place.right - place.left))
  columns.clear(count)
  let longest = bridged
  for (const { tile, part } of pieces) {
    const channel = tile.channels.get(name)
    if (channel === undefined) continue
    gather({ at: tile.at, channel, part }, { place, columns, count })
    longest = Math.max(longest, 3 * pitch(tile.at, place))
  }
  bars(context, { columns, count, place, longest })
}

/** Pixels from one entry to the next. */
const pitch = (at: Float64Array, { view, left, right }: TracePlace): number =>
  at.length < 2 ? 0 : (((at[at.length - 1] - at[0]) / (at.length - 1)) * (right - left)) / span(view)

interface Source {
  readonly at: Float64Array
  readonly channel: TileChannel
  readonly part: View
}

/** Puts the entries of a tile into their pixels. Rows farther apart than a pixel are joined by a straight line. */
function gather({ at, channel, part }: Source, to: { place: TracePlace; columns: PixelColumns; count: number }): void {
  const { place, columns, count } = to
  const { view, left, right, y } = place
  const perSecond = (right - left) / span(view)
  const from = Math.max(part.from, view.from - 2 / perSecond)
  const until = Math.min(part.to, view.to + 2 / perSecond)
  const { top, bottom } = columns
  for (let entry = firstFrom(at, from); entry < at.length && at[entry] <= until; entry++) {
    const column = Math.floor((at[entry] - view.from) * perSecond)
    if (column < 0 || column >= count) continue
    const high = y(channel.max[entry])
    const low = y(channel.min[entry])
    if (!(high <= top[column])) top[column] = high
    if (!(low >= bottom[column])) bottom[column] = low
  }
}

/** First entry at or after a time, less one, so that the line comes in from the left. */
function firstFrom(at: Float64Array, time: number): number {
  let low = 0
  let high = at.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (at[middle] >= time) high = middle
    else low = middle + 1
  }
  return Math.max(0, low - 1)
}

function bars(
  context: BarPen,
  { columns, count, place, longest }: { columns: PixelColumns; count: number; place: TracePlace; longest: number },
): void {
  const { top, bottom } = columns
  const { thick, left } = place
  const half = thick / 2
  let before = -1
  for (let column = 0; column < count; column++) {
    if (Number.isNaN(top[column])) continue
    let high = top[column]
    let low = bottom[column]
    if (before >= 0 && column - before <= longest) {
      const steps = column - before
      const from = (top[before] + bottom[before]) / 2
      const to = (high + low) / 2
      // A line from the middle of the last bar to this one, column by column.
      for (let step = 1; step < steps; step++) {
        const a = from + ((to - from) * (step - 0.5)) / steps
        const b = from + ((to - from) * (step + 0.5)) / steps
        context.fillRect(left + before + step, Math.min(a, b) - half, 1, Math.abs(b - a) + thick)
      }
      if (steps === 1) {
        if (bottom[before] < high) high = bottom[before]
        if (top[before] > low) low = top[before]
      }
    }
    context.fillRect(left + column, high - half, 1, low - high + thick)
    before = column
  }
}
