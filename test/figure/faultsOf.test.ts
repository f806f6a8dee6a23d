import { expect, test } from 'vitest'
import { faultsOf } from './faultsOf.ts'

const sheet = (inside: string): string =>
  `<svg width="100" height="50"><title id="a-title">A</title><desc id="a-desc">B</desc>${inside}</svg>`

test.for([
  ['', []],
  ['<text x="90" y="20" font-size="10">too far right</text>', ['outside: too far right']],
  ['<text x="5" y="60" font-size="10">low</text>', ['outside: low']],
  [
    '<text x="5" y="20" font-size="10">one</text><text x="8" y="22" font-size="10">two</text>',
    ['over each other: one | two'],
  ],
  ['<rect x="NaN"/>', ['a number that is none']],
  ['<g>', ['not well-formed']],
] as const)('%s', ([inside, want]) => {
  expect(faultsOf(sheet(inside))).toEqual(want)
})

test('a picture without words for people who hear it', () => {
  expect(faultsOf('<svg width="1" height="1"></svg>')).toEqual(['no title', 'no description'])
})
