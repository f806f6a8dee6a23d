import { expect, test } from 'vitest'
import { heldTogether } from '../../../src/report/words/heldTogether.ts'

test.for([
  { text: '5 N at 23 °C', held: '5\u00a0N at 23\u00a0°C' },
  { text: 'within 0.5 % of 200 µm/s', held: 'within 0.5\u00a0% of 200\u00a0µm/s' },
  { text: '(12.3 ± 0.4) mN', held: '(12.3 ± 0.4) mN' },
  { text: 'steps 1, 2 so far; 3 Newtons', held: 'steps 1, 2 so far; 3 Newtons' },
  { text: 'r = 15 mm', held: 'r\u00a0=\u00a015\u00a0mm' },
  { text: '20 µN·m·s² and 210 GPa', held: '20\u00a0µN·m·s² and 210\u00a0GPa' },
])('$text', ({ text, held }) => {
  expect(heldTogether(text)).toBe(held)
})
