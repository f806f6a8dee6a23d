/** Characters that a font has, as ranges from the first to the last, both included. */
export type GlyphRanges = readonly (readonly [number, number])[]

const tag = (name: string): number => [...name].reduce((sum, letter) => sum * 256 + letter.charCodeAt(0), 0)

/**
 * The characters of an OpenType font, from the segmented coverage of its `cmap` table (ISO/IEC 14496-22, cmap format 12).
 * Throws RangeError for a font without one.
 */
export function glyphsOf(font: Uint8Array): GlyphRanges {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength)
  const tables = Array.from({ length: view.getUint16(4) }, (_, i) => 12 + 16 * i)
  const record = tables.find((at) => view.getUint32(at) === tag('cmap'))
  if (record === undefined) throw new RangeError('the font has no cmap table')
  const cmap = view.getUint32(record + 8)
  const subtables = Array.from({ length: view.getUint16(cmap + 2) }, (_, i) => cmap + view.getUint32(cmap + 8 + 8 * i))
  const segmented = subtables.find((at) => view.getUint16(at) === 12)
  if (segmented === undefined) throw new RangeError('the font has no segmented coverage (cmap format 12)')
  return Array.from({ length: view.getUint32(segmented + 12) }, (_, i) => {
    const group = segmented + 16 + 12 * i
    return [view.getUint32(group), view.getUint32(group + 4)] as const
  })
}

/** Tells whether the ranges hold a character. */
export const hasGlyph = (ranges: GlyphRanges, code: number): boolean =>
  ranges.some(([first, last]) => code >= first && code <= last)
