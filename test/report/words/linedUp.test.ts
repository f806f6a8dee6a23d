import { expect, test } from 'vitest'
import { linedUp } from '../../../src/report/words/linedUp.ts'

const column = (align: 'left' | 'right' | 'point') => ({ head: '', unit: '', align })

test('numbers in a column at the point get as many places behind it', () => {
  const cells = linedUp([column('point')], [['1.5'], ['22.25'], ['3'], ['none'], ['']]).map(([cell]) => cell)
  expect(cells).toEqual(['1.5\u2007', '22.25', '3\u2009\u2007\u2007', 'none', ''])
})

test('other columns stay as they are', () => {
  const rows = [
    ['1.5', '2'],
    ['1', '3.25'],
  ]
  expect(linedUp([column('left'), column('right')], rows)).toEqual(rows)
})
