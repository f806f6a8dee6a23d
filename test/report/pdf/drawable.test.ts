import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { breakable, drawable } from '../../../src/report/pdf/drawable.ts'
import { glyphsOf, hasGlyph } from '../../../src/report/pdf/glyphs.ts'

const folder = 'src/report/fonts'
const fonts = readdirSync(folder).filter((name) => name.endsWith('.otf'))
const sans = fonts
  .filter((name) => name.startsWith('SourceSans3'))
  .map((name) => glyphsOf(readFileSync(`${folder}/${name}`)))

// What each font has was listed once with another reader of cmap tables and lies here as its answer.
describe('glyphs', () => {
  test.for(fonts)('%s has letters, Greek and signs of units, but no Han and no emoji', (name) => {
    const ranges = glyphsOf(readFileSync(`${folder}/${name}`))
    for (const letter of 'Azß0µληΩ±×·−≤≥√²‹›\u2007\u202f')
      expect(hasGlyph(ranges, letter.codePointAt(0) ?? 0), letter).toBe(true)
    for (const letter of '燕😀') expect(hasGlyph(ranges, letter.codePointAt(0) ?? 0), letter).toBe(false)
  })

  test('bytes that are no font are refused', () => {
    expect(() => glyphsOf(new Uint8Array(64))).toThrow('cmap')
  })
})

describe('drawable', () => {
  test.for([
    { text: 'oat drink, 35 °C', drawn: 'oat drink, 35 °C' },
    { text: '燕', drawn: '‹U+71D5›' },
    { text: 'a\nb\tc', drawn: 'a b c' },
    { text: 'a\u0000b\u009fc', drawn: 'abc' },
    { text: 'lone \udfff', drawn: 'lone ‹U+FFFD›' },
  ])('$text', ({ text, drawn }) => {
    expect(drawable(text, sans)).toBe(drawn)
  })

  test('gives nothing that a font lacks, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const lacking = [...drawable(text, sans)].filter(
          (letter) => !sans.every((ranges) => hasGlyph(ranges, letter.codePointAt(0) ?? 0)),
        )
        expect(lacking).toEqual([])
      }),
    )
  })
})

test('long words get places to break, short ones and pairs of surrogates stay whole', () => {
  expect(breakable('a checksum')).toBe('a checksum')
  const parts = breakable('f'.repeat(64)).split('\u200b')
  expect(parts.join('')).toBe('f'.repeat(64))
  expect(Math.max(...parts.map(({ length }) => length))).toBeLessThanOrEqual(32)
  expect(breakable('😀'.repeat(40)).isWellFormed()).toBe(true)
})
