import { beforeEach, expect, test } from 'vitest'
import { forgetChanges, noteChange, redo, undo } from '../../../src/web/work/undo.ts'

let value = 0
beforeEach(() => {
  forgetChanges()
  value = 0
})

/** A change of the value, done and noted. */
function change(to: number): void {
  const before = value
  value = to
  noteChange({
    words: `${before} → ${to}`,
    undo: () => {
      value = before
    },
    redo: () => {
      value = to
    },
  })
}

test('the last change is undone first, and done again last', () => {
  for (const to of [1, 2, 3]) change(to)
  undo()
  undo()
  expect(value).toBe(1)
  redo()
  expect(value).toBe(2)
  redo()
  redo()
  expect(value).toBe(3)
})

test('a new change takes the place of what was undone', () => {
  change(1)
  undo()
  change(5)
  redo()
  expect(value).toBe(5)
  undo()
  undo()
  expect(value).toBe(0)
})

test('two hundred changes can be undone, the oldest fall away', () => {
  for (let to = 1; to <= 205; to++) change(to)
  for (let i = 0; i < 300; i++) undo()
  expect(value).toBe(5)
})

test('nothing is undone in another study', () => {
  change(1)
  forgetChanges()
  undo()
  expect(value).toBe(1)
})
