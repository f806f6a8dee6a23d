import { lettering, sizes } from './lettering.ts'
import { element, type Markup, rounded } from './markup.ts'
import { pointDot } from './pointMarks.ts'
import type { Block } from './sheet.ts'
import type { Stage } from './stage.ts'
import { textWidth } from './textWidth.ts'

export interface LegendEntry {
  readonly text: string
  readonly mark: 'point' | 'falling' | 'hollow' | 'missing' | 'curve' | 'bias' | 'hatch'
}

const lineHeight = 19
const swatch = 26

/** What the marks in the plot mean; only marks that occur are listed. */
export function legend(entries: readonly LegendEntry[], top: number, stage: Stage): Block {
  if (entries.length === 0) return { markup: '', height: 0 }
  const { plot, palette, width } = stage
  const right = width - 16
  const pieces: Markup[] = []
  let x = plot.left
  let y = top + 9
  for (const entry of entries) {
    const wide = swatch + textWidth(entry.text, sizes.small)
    if (x > plot.left && x + wide > right) {
      x = plot.left
      y += lineHeight
    }
    pieces.push(swatchOf(entry.mark, { x, y, stage }))
    pieces.push(lettering(entry.text, { x: x + swatch, y: y + 4, fill: palette.quiet, size: sizes.small }))
    x += wide + 22
  }
  return { markup: element('g', {}, ...pieces), height: y - top + lineHeight }
}

function swatchOf(mark: LegendEntry['mark'], at: { x: number; y: number; stage: Stage }): Markup {
  const { x, y, stage } = at
  const { palette, id } = stage
  const middle = x + 10
  switch (mark) {
    case 'point':
    case 'falling':
    case 'hollow':
      return (
        element('path', {
          d: `M${rounded(middle)} ${y - 7}v14M${rounded(middle - 3.5)} ${y - 7}h7m-7 14h7`,
          stroke: palette.ink,
          fill: 'none',
        }) + pointDot({ x: middle, y }, { direction: mark === 'falling' ? -1 : 1, trusted: mark !== 'hollow' }, palette)
      )
    case 'missing':
      return element('path', {
        d: `M${rounded(middle - 4)} ${y - 4}l8 8m0 -8l-8 8`,
        stroke: palette.stops,
        'stroke-width': 1.6,
        fill: 'none',
      })
    case 'curve':
      return (
        element('rect', {
          x,
          y: y - 5,
          width: 20,
          height: 10,
          fill: palette.accent,
          'fill-opacity': palette.bandOpacity,
        }) + element('path', { d: `M${rounded(x)} ${y}h20`, stroke: palette.accent, 'stroke-width': 1.8, fill: 'none' })
      )
    case 'bias':
      return element('rect', {
        x: middle - 5.5,
        y: y - 7,
        width: 11,
        height: 14,
        fill: palette.bias,
        'fill-opacity': 0.45,
      })
    case 'hatch':
      return element('rect', { x, y: y - 6, width: 20, height: 12, fill: `url(#${id}-hatch)`, stroke: palette.shade })
  }
}
