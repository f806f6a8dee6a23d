import { expect, test } from 'vitest'
import { stepsInWords } from '../../src/figure/signKey.ts'

test('steps of a sign', () => {
  expect(stepsInWords({ steps: [1, 2, 5], everywhere: false })).toBe('steps 1, 2, 5')
  expect(stepsInWords({ steps: [1, 2, 3, 4], everywhere: true })).toBe('every step')
})
