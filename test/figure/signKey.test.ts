import { expect, test } from 'vitest'
import { stepsInWords } from '../../src/figure/signKey.ts'

test.for([
  { steps: [3], want: 'step 3' },
  { steps: [1, 2], want: 'steps 1, 2' },
  { steps: [1, 2, 3, 4, 7], want: 'steps 1–4, 7' },
  { steps: [1, 3, 5, 7, 9, 11, 13], want: '7 steps' },
])('$want', ({ steps, want }) => expect(stepsInWords({ steps, everywhere: false })).toBe(want))

test('every step', () => expect(stepsInWords({ steps: [1, 2, 3, 4], everywhere: true })).toBe('every step'))
