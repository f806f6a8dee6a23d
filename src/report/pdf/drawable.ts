import { type GlyphRanges, hasGlyph } from './glyphs.ts'

/** Letters that may stand in a row before a line must be able to break: a checksum has 64. */
const longestWord = 32
const breakHere = '\u200b'

/**
 * Text that the fonts of the PDF can draw: a character that one of them lacks is written as its code, `‹U+82F9›`, since an
 * archived PDF may hold no empty boxes and the font of the machine would change the bytes. Control characters go.
 */
export function drawable(text: string, fonts: readonly GlyphRanges[]): string {
  let drawn = ''
  for (const letter of text.toWellFormed()) {
    const code = letter.codePointAt(0) ?? 0
    if (code < 0x20 || (code >= 0x7f && code < 0xa0)) drawn += /\s/.test(letter) ? ' ' : ''
    else drawn += fonts.every((ranges) => hasGlyph(ranges, code)) ? letter : `‹U+${code.toString(16).toUpperCase()}›`
  }
  return drawn
}

/** The same with a place to break in words that no line holds. */
export const breakable = (text: string): string =>
  text.replace(new RegExp(`\\S{${longestWord}}(?=\\S)`, 'gu'), (part) => part + breakHere)
