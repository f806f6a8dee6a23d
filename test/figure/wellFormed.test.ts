import { expect, test } from 'vitest'
import { wellFormed } from './wellFormed.ts'

test.for([
  ['<svg><g a="1"/><text>a &amp; b</text></svg>', true],
  ['<svg><g></svg></g>', false],
  ['<svg><g>', false],
  ['<svg/><svg/>', false],
  ['<svg>a & b</svg>', false],
  ['<svg>a < b</svg>', false],
  ['<svg a="1" b=2/>', false],
] as const)('%s: %s', ([svg, want]) => {
  expect(wellFormed(svg)).toBe(want)
})
