import { expect, test } from 'vitest'
import { printSteps } from '../../../src/core/quantity/index.ts'

test.for([
  { steps: [3], want: 'step 3' },
  { steps: [1, 2], want: 'steps 1, 2' },
  { steps: [1, 2, 3, 4, 7], want: 'steps 1–4, 7' },
  { steps: [1, 3, 5, 7, 9, 11], want: 'steps 1, 3, 5, 7, 9, 11' },
  { steps: [1, 3, 5, 7, 9, 11, 13], want: '7 steps' },
])('$want', ({ steps, want }) => expect(printSteps(steps)).toBe(want))
