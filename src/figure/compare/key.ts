import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Sheet } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'

/** What a mark in a figure of comparison means. */
export interface KeyEntry {
  readonly mark: 'band' | 'dots' | 'shade' | 'pale' | 'thin' | 'removed' | 'flagged'
  readonly text: string
}

interface KeyPlace {
  readonly left: number
  readonly top: number
  readonly sheet: Sheet
}

const swatch = 28
const lineHeight = 19

/** Marks with their meaning in one or more lines. */
export function keyOf(
  entries: readonly KeyEntry[],
  { left, top, sheet }: KeyPlace,
): { readonly markup: Markup; readonly height: number; readonly bottom: number } {
  let x = left
  let y = top + 10
  const pieces = entries.map(({ mark, text }) => {
    const wide = swatch + textWidth(text, sizes.small)
    if (x > left && x + wide > sheet.width - 16) {
      x = left
      y += lineHeight
    }
    const piece =
      swatchOf(mark, { x, y, sheet }) +
      lettering(text, { x: x + swatch, y: y + 4, fill: sheet.palette.quiet, size: sizes.small })
    x += wide + 22
    return piece
  })
  const bottom = y + lineHeight - 4
  return { markup: element('g', {}, ...pieces), height: bottom - top, bottom }
}

function swatchOf(
  mark: KeyEntry['mark'],
  { x, y, sheet: { palette } }: { x: number; y: number; sheet: Sheet },
): Markup {
  const line = (more: Readonly<Record<string, string | number>>): Markup =>
    element('path', { d: `M${rounded(x)} ${y}h22`, fill: 'none', stroke: palette.accent, 'stroke-width': 1, ...more })
  const box = (more: Readonly<Record<string, string | number>>): Markup =>
    element('rect', { x, y: y - 6, width: 22, height: 12, ...more })
  switch (mark) {
    case 'band':
      return box({ fill: palette.accent, 'fill-opacity': palette.bandOpacity }) + line({ 'stroke-width': 2 })
    case 'dots':
      return line({ 'stroke-dasharray': '2 3' })
    case 'shade':
      return box({ fill: palette.shade, 'fill-opacity': 0.2 })
    case 'pale':
      return box({ fill: palette.paper, stroke: palette.shade, 'stroke-dasharray': '4 3' })
    case 'thin':
      return line({ 'stroke-opacity': 0.7 })
    case 'removed':
      return line({ stroke: palette.quiet, 'stroke-dasharray': '6 4' })
    case 'flagged':
      return line({ stroke: palette.caution, 'stroke-width': 2 })
  }
}
