import { expect, test } from 'vitest'
import { ratioWithin } from '../../../../../src/web/stations/read/record/ratioWithin.ts'
import { withAnswer, withWindow } from '../../../../../src/web/stations/read/record/windowList.ts'

test('one window a step, in the order of the steps; null puts the program’s back', () => {
  const two = withWindow(withWindow([], 4, { from: 1, to: 2 }), 2, { from: 0, to: 1 })
  expect(two.map(({ step }) => step)).toEqual([2, 4])
  expect(withWindow(two, 4, { from: 1.5, to: 2 })).toContainEqual({ step: 4, from: 1.5, to: 2 })
  expect(withWindow(two, 4, null)).toEqual([{ step: 2, from: 0, to: 1 }])
})

test('an answer is one of its kind and step; an empty one is taken back', () => {
  const said = withAnswer([], { kind: 'stickSlip', step: 3, answer: ' seen ' })
  expect(said).toEqual([{ kind: 'stickSlip', step: 3, answer: 'seen' }])
  expect(withAnswer(said, { kind: 'stickSlip', step: null, answer: 'all of it' })).toHaveLength(2)
  expect(withAnswer(said, { kind: 'stickSlip', step: 3, answer: '  ' })).toEqual([])
})

test('a window’s ratio of means, by hand: (0.2·4 + 0.3·6) / (4 + 6) = 0.26', () => {
  const rows = { time: [0, 1, 2, 3], friction: [0.9, 0.2, 0.3, null], axialForce: [5, 4, 6, 5] }
  expect(ratioWithin(rows, { from: 1, to: 3 })).toBeCloseTo(0.26, 12)
  expect(ratioWithin(rows, { from: 2.5, to: 3 })).toBeUndefined()
})
