import { expect, test } from 'vitest'
import { glued } from '../../../src/web/sentence/glued.ts'

const blank = '\u00a0'

test.for([
  ['a difference of 15 % in 80 % of all', `a difference of 15${blank}% in 80${blank}% of all`],
  ['from 100 µm/s to 200 mm/s (limited', `from 100${blank}µm/s to 200${blank}mm/s (limited`],
  ['takes 1.3 h at 10 points', `takes 1.3${blank}h at 10 points`],
  ['5 see 12 %', `5 see 12${blank}%`],
  ['in 3 studies', 'in 3 studies'],
])('%s', ([text, want]) => {
  expect(glued(text)).toBe(want)
})
