import type { ChannelName, RecordStretch, Second } from '../../core/terms/index.ts'
import type { SheetOptions, Words } from '../sheet.ts'

/** One raw channel, already thinned to two values a pixel column; the columns share the whole time evenly. NaN where a column holds no number. */
export interface StripChannel {
  readonly name: ChannelName
  readonly columns: { readonly min: ArrayLike<number>; readonly max: ArrayLike<number> }
}

/** What the strip shows: raw channels over time, and what became of every stretch. */
export interface StripFigureData extends Words {
  /** First and last time of the record. */
  readonly time: readonly [Second, Second]
  /** One panel each, from top to bottom; `time` and `step` get none. */
  readonly channels: readonly StripChannel[]
  readonly stretches: readonly RecordStretch[]
}

export interface StripFigureOptions extends SheetOptions {
  /** Height of one panel in pixels, 36 to 400. */
  readonly panelHeight: number
}

export const stripFigureDefaults: StripFigureOptions = { palette: 'light', width: 880, panelHeight: 64, id: 'strip' }

/** Margins at both sides of the panels. A record is best thinned to as many columns as lie between them. */
export const stripMargins = { left: 66, right: 110 } as const

/** How many columns a strip of this width shows, one a pixel. */
export const stripColumns = (width: number = stripFigureDefaults.width): number =>
  Math.floor(width - stripMargins.left - stripMargins.right)
