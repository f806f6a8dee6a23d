import type { PaletteName } from '../../../../figure/index.ts'
import type { Piece } from './envelopes.ts'
import type { PixelColumns } from './paintTrace.ts'
import type { StripScene } from './stripScene.ts'
import type { View } from './view.ts'

/** One picture of a strip. */
export interface StripPicture {
  readonly scene: StripScene
  readonly view: View
  readonly pieces: readonly Piece[]
  readonly palette: PaletteName
  /** Device pixels for one pixel of the page. */
  readonly density: number
  /** Step that is lit, if any. */
  readonly lit: number | null
  readonly columns: PixelColumns
}
