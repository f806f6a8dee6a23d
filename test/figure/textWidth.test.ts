import { expect, test } from 'vitest'
import { fitted, textWidth, wrapped } from '../../src/figure/textWidth.ts'

test('a text that fits stays; one that does not is cut at a word, without a dangling separator', () => {
  expect(fitted('one two', 10, 200)).toBe('one two')
  const cut = fitted('three balls · steel on lacquer · 5 N', 10, textWidth('three balls · steel on lacquer · …', 10))
  expect(cut).toBe('three balls · steel on lacquer…')
})

test('lines keep within their width, and no word is lost', () => {
  const text = 'Invented data: no lab measured them, and nobody should believe them.'
  const lines = wrapped(text, 10, 150)
  expect(lines.length).toBeGreaterThan(1)
  for (const line of lines) expect(textWidth(line, 10)).toBeLessThanOrEqual(150)
  expect(lines.join(' ')).toBe(text)
})
