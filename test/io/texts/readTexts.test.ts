import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readTexts } from '../../../src/io/texts/index.ts'

const named = (text: string): unknown => {
  const read = readTexts(text, 'notes.yaml')
  if (!read.ok) return read.problems.map(({ kind, place }) => [kind, place.line])
  return read.value.map((one) => [one.name, one.text, one.place.line])
}

test.for([
  [
    'question: Which slides easier?\ncleaning: "ethanol: 5 min"\n',
    [
      ['question', 'Which slides easier?', 1],
      ['cleaning', 'ethanol: 5 min', 2],
    ],
  ],
  [
    'a: |\n  two\n  lines\nb: >\n  one\n  line\n',
    [
      ['a', 'two\nlines', 1],
      ['b', 'one line', 4],
    ],
  ],
  [
    'yes: no\n12: 012\n',
    [
      ['yes', 'no', 1],
      ['12', '012', 2],
    ],
  ],
  ['\uFEFFa:\n', [['a', '', 1]]],
  ['', []],
  ['# nothing said yet\n', []],
])('%j', ([text, want]) => expect(named(text as string)).toEqual(want))

test.for([
  ['- a\n- b\n', [['textsNotNamed', 1]]],
  [
    'a: { b: c }\nd:\n  - e\n',
    [
      ['textsNotNamed', 1],
      ['textsNotNamed', 2],
    ],
  ],
  ['a: b: c\n', [['textsSyntax', 1]]],
  ['a: 1\na: 2\n', [['textsSyntax', 2]]],
  ['x'.repeat(300_000), [['textsTooLong', undefined]]],
])('what is wrong, all at once: %.20j', ([text, want]) => expect(named(text as string)).toEqual(want))

test('whatever comes, it answers', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 200 }),
      (text) => typeof readTexts(text, 'x').ok === 'boolean',
    ),
  )
})
