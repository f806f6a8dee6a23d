import { element, type Markup, rounded } from '../markup.ts'
import type { Box } from '../sheet.ts'
import { colourTable } from './colourScale.ts'
import { indexedPng } from './indexedPng.ts'
import type { TurnCells } from './turnMapData.ts'

/** Levels of colour; one index more is transparent and stands for empty cells. */
const levels = 255

/** The cells as one image, a pixel each, stretched over the plot without smoothing. */
export function cellImage(map: TurnCells, stops: readonly string[], plot: Box): Markup {
  if (map.range === null || map.rows === 0) return ''
  const [low, high] = map.range
  const perLevel = high > low ? (levels - 1) / (high - low) : 0
  const middle = high > low ? 0 : levels >> 1
  const pixels = new Uint8Array(map.columns * map.rows)
  for (let cell = 0; cell < pixels.length; cell++) {
    const value = map.mean[cell]
    if (Number.isNaN(value)) continue
    const level = middle + (value - low) * perLevel
    pixels[cell] = 1 + Math.round(Math.min(levels - 1, Math.max(0, level)))
  }
  const colours = new Uint8Array(3 * (levels + 1))
  colours.set(colourTable(stops, levels), 3)
  const address = indexedPng({ width: map.columns, height: map.rows, pixels, colours })
  const box = { x: plot.left, y: plot.top, width: plot.right - plot.left, height: plot.bottom - plot.top }
  const look = { preserveAspectRatio: 'none', 'image-rendering': 'optimizeSpeed', style: 'image-rendering:pixelated' }
  // The address needs no escaping, and to look through a hundred thousand letters for it takes longer than to make them.
  return element('image', { ...box, ...look, href: '' }).replace('href=""', () => `href="${address}"`)
}

/** An outline of the map. */
export const mapFrame = (plot: Box, stroke: string): Markup =>
  element('rect', {
    x: plot.left,
    y: plot.top,
    width: Number(rounded(plot.right - plot.left)),
    height: plot.bottom - plot.top,
    fill: 'none',
    stroke,
    'stroke-width': 1,
  })
