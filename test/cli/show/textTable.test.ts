import { expect, test } from 'vitest'
import { textTable } from '../../../src/cli/show/textTable.ts'

test('heads, units, a rule, and numbers lined up at their points', () => {
  const table = textTable([
    { head: 'step', unit: '', align: 'right', cells: ['1', '12'] },
    { head: 'speed', unit: 'mm/s', align: 'point', cells: ['0.5', '120'] },
    { head: 'friction', unit: '', align: 'point', cells: ['0.1234 ± 0.0012', '0.05 ± 0.01'] },
    { head: 'remarks', unit: '', align: 'left', cells: ['none', ''] },
  ])
  expect(table.split('\n')).toEqual([
    '  step  speed         friction  remarks',
    '         mm/s',
    '  ────  ─────  ───────────────  ───────',
    '     1    0.5  0.1234 ± 0.0012  none',
    '    12  120    0.05   ± 0.01',
  ])
})

test('no unit row where no column has a unit, and no rows at all', () => {
  expect(textTable([{ head: 'a', unit: '', align: 'left', cells: [] }])).toBe('  a\n  ─')
})
