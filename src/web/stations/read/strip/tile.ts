import type { ChannelName, Second } from '../../../../core/terms/index.ts'
import { span, type View } from './view.ts'

/** Columns that one tile holds. */
export const tileColumns = 1024

/**
 * Place of a tile: level 0 is the whole record in one tile, each level halves the span. Two levels differ by a factor of two, so that
 * a picture never draws more than two columns a pixel.
 */
export interface TilePlace {
  readonly level: number
  readonly index: number
}

/** One channel of a tile: smallest and largest at each time; NaN where nothing was recorded. The same numbers where rows lie bare. */
export interface TileChannel {
  readonly min: Float64Array
  readonly max: Float64Array
}

/** A piece of a record: envelope over its columns, or the rows themselves where they are few. */
export interface Tile {
  readonly at: Float64Array
  readonly channels: ReadonlyMap<ChannelName, TileChannel>
  /** True where the entries are rows and not envelopes: a closer look shows nothing more. */
  readonly exact: boolean
}

export function tileSpan({ level, index }: TilePlace, whole: View): View {
  const wide: Second = span(whole) / 2 ** level
  return { from: whole.from + index * wide, to: whole.from + (index + 1) * wide }
}

/** The level that gives every pixel of a view a column of its own, and not more than two. */
export function levelFor(view: View, pixels: number, { whole, deepest }: { whole: View; deepest: number }): number {
  const columns = (pixels * span(whole)) / Math.max(span(view), Number.MIN_VALUE)
  return Math.min(deepest, Math.max(0, Math.ceil(Math.log2(columns / tileColumns))))
}

/** Below this level a tile of an evenly sampled record holds a few dozen rows: nobody looks closer. */
export const deepestLevel = (rows: number): number => Math.max(0, Math.ceil(Math.log2(rows / 64)))

/** The tiles of a level that a view touches, from left to right. */
export function placesIn(view: View, level: number, whole: View): readonly TilePlace[] {
  const wide = span(whole) / 2 ** level
  const first = Math.max(0, Math.floor((view.from - whole.from) / wide))
  const last = Math.min(2 ** level - 1, Math.floor((view.to - whole.from) / wide))
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => ({ level, index: first + index }))
}

export const above = ({ level, index }: TilePlace): TilePlace => ({ level: level - 1, index: index >> 1 })
