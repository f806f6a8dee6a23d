import { lettering, sizes } from '../lettering.ts'
import type { Markup } from '../markup.ts'
import type { Block, Sheet } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import { limitSign } from './plane.ts'

/** A limit as pictures name it. */
export interface FigureLimit {
  /** One letter. */
  readonly sign: string
  readonly words: string
}

const lineHeight = 21

/** What the letters of the limits mean; only limits that occur are given. */
export function limitKey(
  limits: readonly FigureLimit[],
  { left, top }: { readonly left: number; readonly top: number },
  sheet: Sheet,
): Block {
  if (limits.length === 0) return { markup: '', height: 0 }
  const pieces: Markup[] = []
  let x = left
  let y = top + 11
  for (const limit of limits) {
    const wide = 22 + textWidth(limit.words, sizes.small)
    if (x > left && x + wide > sheet.width - 16) {
      x = left
      y += lineHeight
    }
    pieces.push(limitSign(limit.sign, { x: x + 8, y }, sheet))
    pieces.push(lettering(limit.words, { x: x + 22, y: y + 4, fill: sheet.palette.quiet, size: sizes.small }))
    x += wide + 20
  }
  return { markup: pieces.join(''), height: y - top + lineHeight - 8 }
}
