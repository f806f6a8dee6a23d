import { expect, test } from 'vitest'
import { type PaletteName, palettes } from '../../src/figure/index.ts'

/** Relative luminance and contrast ratio: WCAG 2.2, definitions; formulas there, thresholds 1.4.3 (text 4.5) and 1.4.11 (marks 3). */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function contrast(one: string, two: string): number {
  const [dark = 0, bright = 0] = [luminance(one), luminance(two)].sort((a, b) => a - b)
  return (bright + 0.05) / (dark + 0.05)
}

const names = Object.keys(palettes) as PaletteName[]

test('black on white is 21 : 1', () => expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10))

test.for(names)('words and marks can be read: %s', (name) => {
  const palette = palettes[name]
  for (const words of [palette.ink, palette.quiet, palette.shared])
    expect(contrast(words, palette.paper)).toBeGreaterThanOrEqual(4.5)
  for (const mark of [palette.accent, palette.stops]) expect(contrast(mark, palette.paper)).toBeGreaterThanOrEqual(3)
  expect(contrast(palette.onStops, palette.stops)).toBeGreaterThanOrEqual(3)
  expect(contrast(palette.onCaution, palette.caution)).toBeGreaterThanOrEqual(4.5)
  expect(contrast(palette.onNote, palette.note)).toBeGreaterThanOrEqual(4.5)
})

test('meaning in colour uses the set of Okabe & Ito 2008', () => {
  // From memory: the eight colours of "Color universal design" as sRGB; black is the eighth.
  const set = ['#e69f00', '#56b4e9', '#009e73', '#f0e442', '#0072b2', '#d55e00', '#cc79a7', '#000000']
  for (const name of ['light', 'dark'] as const) {
    const { shared, bias, stops, caution, note } = palettes[name]
    for (const colour of [shared, bias, stops, caution, note]) expect(set).toContain(colour)
  }
})
