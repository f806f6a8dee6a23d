import { lettering, sizes } from '../lettering.ts'
import { element, type Markup } from '../markup.ts'
import type { Block, Sheet } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'

/** What a mark means. `draw` gets the middle of a place 22 pixels wide. */
export interface KeyEntry {
  readonly text: string
  readonly draw: (at: { readonly x: number; readonly y: number }) => Markup
}

const swatch = 30

/** A key below a plot, as many entries a line as there is room for. */
export function plotKey(entries: readonly KeyEntry[], at: { left: number; top: number }, sheet: Sheet): Block {
  const pieces: Markup[] = []
  let x = at.left
  let y = at.top + 9
  for (const { text, draw } of entries) {
    const wide = swatch + textWidth(text, sizes.small)
    if (x > at.left && x + wide > sheet.width - 16) {
      x = at.left
      y += 19
    }
    pieces.push(draw({ x: x + 11, y }))
    pieces.push(lettering(text, { x: x + swatch, y: y + 4, fill: sheet.palette.quiet, size: sizes.small }))
    x += wide + 22
  }
  return { markup: element('g', {}, ...pieces), height: entries.length === 0 ? 0 : y - at.top + 19 }
}
