import { expect, test } from 'vitest'
import { doubtAbove, doubtBelow, doubtsFound } from '../../../src/core/terms/index.ts'

const possible = { kind: 'largeStrain', say: (seen: string, limit: string) => `${seen} of ${limit}` } as const

test('a doubt is there beyond the limit only, and prints two digits', () => {
  expect(doubtAbove({ ...possible, seen: 0.19123, limit: 0.1 })).toEqual({
    kind: 'largeStrain',
    seen: 0.19123,
    limit: 0.1,
    sentence: '0.19 of 0.1',
  })
  expect(doubtAbove({ ...possible, seen: 0.1, limit: 0.1 })).toBeUndefined()
  expect(doubtBelow({ ...possible, seen: 0.1, limit: 0.1 })).toBeUndefined()
  expect(doubtBelow({ ...possible, seen: 1.876e-12, limit: 8e-13 })).toBeUndefined()
  expect(doubtBelow({ ...possible, seen: 1.876e-13, limit: 8e-13 })?.sentence).toBe('1.9e-13 of 8e-13')
  expect(doubtAbove({ ...possible, seen: 1234, limit: 1e-6 })?.sentence).toBe('1200 of 1e-6')
  expect(doubtBelow({ ...possible, seen: 0, limit: 1 })?.sentence).toBe('0 of 1')
})

test('only those that were found are kept', () => {
  const found = doubtAbove({ ...possible, seen: 2, limit: 1 })
  expect(doubtsFound(undefined, found, undefined)).toEqual([found])
})
