import { expect, test } from 'vitest'
import { resultDifferences } from '../../../src/bench/lab/resultDifferences.ts'

const of = (before: unknown, after: unknown, except?: readonly string[]) =>
  resultDifferences(JSON.stringify(before), JSON.stringify(after), except)

test('equal documents differ in nothing', () => {
  const document = { points: [{ friction: 0.2, why: null }], empty: [], flag: true }
  expect(of(document, document)).toEqual([])
})

test('a field of a list is one field: how many places changed, the largest change and where', () => {
  const before = { points: [{ friction: 0.2 }, { friction: 0.1 }, { friction: 0.4 }] }
  const after = { points: [{ friction: 0.2 }, { friction: 0.11 }, { friction: 0.404 }] }
  const [only, ...rest] = of(before, after)
  expect(rest).toEqual([])
  expect(only).toMatchObject({
    field: 'points[].friction',
    changed: 2,
    of: 3,
    at: 'points[1].friction',
    before: 0.1,
    after: 0.11,
  })
  expect(only.largest).toBeCloseTo(0.1, 12)
})

test('the largest change is found wherever it stands', () => {
  const before = { a: [1, 1, 1] }
  for (const at of [0, 1, 2]) {
    const after = { a: before.a.map((value, i) => (i === at ? value * 3 : value * 1.5)) }
    expect(of(before, after)).toMatchObject([{ at: `a[${at}]`, changed: 3, of: 3, largest: 2 }])
  }
})

test('words, and what came or went, weigh more than any change of a number', () => {
  const before = { list: [1, 2], low: 3, why: 'a', gone: 1 }
  const after = { list: [10, 2, 5], low: null, why: 'b', fresh: 2 }
  expect(of(before, after)).toEqual([
    { field: 'list[]', changed: 2, of: 3, largest: null, at: 'list[2]', before: undefined, after: 5 },
    { field: 'low', changed: 1, of: 1, largest: null, at: 'low', before: 3, after: null },
    { field: 'why', changed: 1, of: 1, largest: null, at: 'why', before: 'a', after: 'b' },
    { field: 'gone', changed: 1, of: 1, largest: null, at: 'gone', before: 1, after: undefined },
    { field: 'fresh', changed: 1, of: 1, largest: null, at: 'fresh', before: undefined, after: 2 },
  ])
})

test('a number that was zero changed by more than can be said; what does not count is left out', () => {
  expect(of({ a: 0 }, { a: 1 })).toMatchObject([{ largest: Number.POSITIVE_INFINITY }])
  expect(of({ origin: { program: 'a' } }, { origin: { program: 'b' } }, ['origin.program'])).toEqual([])
})
