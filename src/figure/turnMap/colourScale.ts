import type { PaletteName } from '../palette.ts'

/**
 * Colours of equal steps to the eye, dark to bright, that colour-blind eyes and grey printers keep in order: every 15th
 * of the 256 entries of "viridis" (Smith, van der Walt and Firing 2015, colormaps.py of BIDS/colormap, dedicated to the public domain
 * under CC0 1.0). Straight lines in between stay within 5 of 255 of the full table.
 */
const viridis = [
  '#440154',
  '#481769',
  '#472a7a',
  '#433d84',
  '#3d4e8a',
  '#355e8d',
  '#2e6d8e',
  '#297b8e',
  '#23898e',
  '#1f978b',
  '#21a585',
  '#2eb37c',
  '#46c06f',
  '#65cb5e',
  '#89d548',
  '#b0dd2f',
  '#d8e219',
  '#fde725',
] as const

/** Greys for print, even in CIE L* by construction of sRGB to within what a printer keeps; white is left to empty cells. */
const greys = ['#1a1a1a', '#e6e6e6'] as const

/**
 * Blue below, paper in the middle, vermilion above, for differences: the two of Okabe & Ito 2008 that colour-blind eyes part best. In print the
 * sign is lost in grey, so there differences stay on the even greys.
 */
const aboutZero = ['#004a7a', '#0072b2', '#7db8da', '#f4f4f0', '#f0a872', '#d55e00', '#8f3a00'] as const

/** Colours at equal distances along the scale, with straight lines in between. */
export function colourStops(palette: PaletteName, diverging = false): readonly string[] {
  if (palette === 'print') return greys
  return diverging ? aboutZero : viridis
}

/** The scale in `levels` colours of three bytes each. */
export function colourTable(stops: readonly string[], levels: number): Uint8Array {
  const knots = stops.map((stop) => [1, 3, 5].map((at) => Number.parseInt(stop.slice(at, at + 2), 16)))
  const table = new Uint8Array(3 * levels)
  for (let level = 0; level < levels; level++) {
    const place = (level / (levels - 1)) * (knots.length - 1)
    const below = Math.min(knots.length - 2, Math.floor(place))
    for (let part = 0; part < 3; part++) {
      const from = knots[below][part]
      table[3 * level + part] = Math.round(from + (place - below) * (knots[below + 1][part] - from))
    }
  }
  return table
}
