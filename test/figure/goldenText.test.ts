import { expect, test } from 'vitest'
import { goldenText } from './goldenText.ts'

test('places are rounded, words and tones are not', () => {
  const svg = '<text x="10.26" y="3.04" font-size="11.5">0.05</text><path d="M1.26 2.04h0.96" fill-opacity="0.18"/>'
  expect(goldenText(svg)).toBe(
    '<text x="10.3" y="3" font-size="11.5">0.05</text>\n<path d="M1.3 2h1" fill-opacity="0.18"/>',
  )
})
