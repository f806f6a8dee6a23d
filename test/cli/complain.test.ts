import { expect, test } from 'vitest'
import { complain, fault, placeInWords } from '../../src/cli/complain.ts'
import type { Problem } from '../../src/core/terms/index.ts'
import { capturedDesk } from './capturedDesk.ts'

const problems: readonly Problem[] = [
  {
    kind: 'unitMissing',
    class: 'badInput',
    place: { file: 'drawer.yaml', line: 7, column: 12, name: 'fixture.ballDiameter', cell: '6.35' },
    what: 'The length has no unit.',
    mend: 'Write it as "6.35 mm".',
  },
  {
    kind: 'keyUnknown',
    class: 'badInput',
    place: { file: 'drawer.yaml', line: 9 },
    what: 'No such key.',
    mend: 'Did you mean "balls"?',
  },
]

test('all problems at once: where, what, mend', () => {
  const desk = capturedDesk()
  expect(complain(problems, desk, false)).toBe(3)
  expect(desk.err()).toBe(
    'kufe: drawer.yaml:7:12, fixture.ballDiameter, "6.35": The length has no unit.\n      Write it as "6.35 mm".\n' +
      'kufe: drawer.yaml:9: No such key.\n      Did you mean "balls"?\n',
  )
  expect(desk.out()).toBe('')
})

test('for machines the same on standard output', () => {
  const desk = capturedDesk()
  complain(problems, desk, true)
  expect(JSON.parse(desk.out())).toEqual({ schemaVersion: '1', error: { code: 3, class: 'badInput', problems } })
})

test.for([
  { place: {}, want: '' },
  { place: { line: 3 }, want: 'line 3' },
  { place: { line: 3, column: 4 }, want: 'line 3:4' },
  { place: { file: 'a.csv', name: 'Torque' }, want: 'a.csv, Torque' },
  { place: { file: 'a.csv', line: 2, cell: '\u001b[31mred\u0007' }, want: 'a.csv:2, "·[31mred·"' },
  { place: { cell: 'x'.repeat(60) }, want: `"${'x'.repeat(39)}…"` },
])('a place in words: $want', ({ place, want }) => expect(placeInWords(place)).toBe(want))

test('a fault of ours: short, how to report it, 70', () => {
  const desk = capturedDesk()
  expect(fault(new RangeError('load must be zero or more, got -1 N'), desk, false)).toBe(70)
  expect(desk.err()).toContain('fault of ours')
  expect(desk.err()).toContain('load must be zero or more, got -1 N')
  expect(desk.err()).toContain('kufe 0.0.0-test')
  expect(desk.err()).not.toContain('at ')
})

test('KUFE_DEBUG shows where it happened', () => {
  const desk = capturedDesk({}, { KUFE_DEBUG: '1' })
  fault(new Error('oops'), desk, true)
  expect(desk.err()).toMatch(/\n {4}at .*complain\.test/)
  expect(JSON.parse(desk.out())).toMatchObject({ error: { code: 70, class: 'fault' } })
})
