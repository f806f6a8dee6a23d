import type { RemarkWeight } from '../core/terms/index.ts'
import { element, type Markup } from './markup.ts'
import { type PaletteName, palettes } from './palette.ts'
import { signMark } from './signs.ts'

/** A remark's sign alone, for a line of words: the same shapes as in the figures. Words belong beside it. */
export const signMarkup = (weight: RemarkWeight, palette: PaletteName): Markup =>
  element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: '0 0 18 18', width: 14, height: 14, 'aria-hidden': 'true' },
    signMark({ letter: '', weight }, { x: 9, y: weight === 'stops' ? 10 : 9 }, palettes[palette]),
  )
